using Formwright.Design.Sections;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Boards;

/// <summary>What the maker's tests say of the soundboard's wood.</summary>
/// <param name="Timber">The wood with every measured figure in place of the table's.</param>
/// <param name="DensityKgPerM3">Density from mass and size, kg/m³, or null.</param>
/// <param name="BendLongMPa">E along the grain from the bending test, MPa, or null.</param>
/// <param name="BendCrossMPa">E across the grain from the bending test, MPa, or null.</param>
/// <param name="Tap">The fit to the tap notes, or null.</param>
/// <param name="LongUncertaintyShare">Relative standard uncertainty of E along the grain from the usual errors of reading; null when not measured.</param>
public sealed record BoardMeasure(
    Timber Timber,
    double? DensityKgPerM3,
    double? BendLongMPa,
    double? BendCrossMPa,
    TapFit? Tap,
    double? LongUncertaintyShare
)
{
    // Half widths of what a maker reads off rule, calliper, scale and tuner (common practice), rectangular.
    private const double RuleMm = 0.5;
    private const double CalliperMm = 0.05;
    private const double DialMm = 0.02;
    private const double ScaleG = 1;
    private const double TunerHz = 0.5;

    /// <summary>
    /// Evaluates a board test on top of the part's wood. Figures that the design gives outright stay; else a tap note goes before a
    /// bending test (it does not creep and has no rests that give).
    /// </summary>
    public static BoardMeasure Of(PartWoodDesign part, BoardTestDesign test)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(test);
        Timber table = Timber.Of(part);
        if (test is not { LengthMm: { } length, WidthMm: { } width, ThicknessMm: { } thickness })
        {
            return new BoardMeasure(table, null, null, null, null, null);
        }

        double? density = test.MassG is { } mass ? mass / (length * width * thickness) * 1e6 : null;
        double? bendLong = test is { BendSpanMm: { } s, BendLoadG: { } w, BendDeflectionMm: { } d }
            ? BendingTest.ModulusMPa(s, w, d, width, thickness)
            : null;
        double? bendCross = test
            is { CrossSpanMm: { } cs, CrossLoadG: { } cw, CrossDeflectionMm: { } cd }
            ? BendingTest.ModulusMPa(cs, cw, cd, length, thickness)
            : null;
        Timber start = table with
        {
            DensityKgPerM3 = part.DensityKgPerM3 ?? density ?? table.DensityKgPerM3,
        };
        TapFit? tap =
            test.MassG is { } grams
            && (test.TapLongHz ?? test.TapCrossHz ?? test.TapTwistHz) is not null
                ? TapFit.Of(
                    length,
                    width,
                    thickness,
                    grams,
                    test.TapLongHz,
                    test.TapCrossHz,
                    test.TapTwistHz,
                    start
                )
                : null;
        TapFit? good = tap is { Converged: true } ? tap : null;
        double? along = test.TapLongHz is null ? bendLong : good?.ModulusLongMPa ?? bendLong;
        double? across = test.TapCrossHz is null ? bendCross : good?.ModulusCrossMPa ?? bendCross;
        double? shear = test.TapTwistHz is null ? null : good?.ShearMPa;
        // What was not measured keeps the species' ratio to the measured modulus along the grain.
        double scale = part.ModulusLongGPa is null && along is { } e ? e / table.ModulusLongMPa : 1;
        Timber timber = start with
        {
            ModulusLongMPa = table.ModulusLongMPa * scale,
            ModulusAcrossMPa =
                1000 * part.ModulusCrossGPa ?? across ?? table.ModulusAcrossMPa * scale,
            ShearMPa = 1000 * part.ModulusShearGPa ?? shear ?? table.ShearMPa * scale,
            DensityMeasured = (part.DensityKgPerM3 ?? density) is not null,
            LongMeasured = part.ModulusLongGPa is not null || along is not null,
            AcrossMeasured = part.ModulusCrossGPa is not null || across is not null,
            ShearMeasured = part.ModulusShearGPa is not null || shear is not null,
        };
        return new BoardMeasure(timber, density, bendLong, bendCross, tap, Uncertainty(test));
    }

    // Relative, by the exponents of the formulas: bending m L³/(b h³ δ); tap m f² L³/(b h³).
    private static double? Uncertainty(BoardTestDesign test)
    {
        static double U(double half, double value) => half / Math.Sqrt(3) / value;
        double thick = 3 * U(CalliperMm, test.ThicknessMm!.Value);
        double wide = U(RuleMm, test.WidthMm!.Value);
        if (test is { TapLongHz: { } note, MassG: { } mass })
        {
            double length = 3 * U(RuleMm, test.LengthMm!.Value);
            return Norm(thick, wide, length, U(ScaleG, mass), 2 * U(TunerHz, note));
        }

        return test is { BendSpanMm: { } span, BendLoadG: { } load, BendDeflectionMm: { } down }
            ? Norm(thick, wide, 3 * U(RuleMm, span), U(ScaleG, load), U(DialMm, down))
            : null;
    }

    private static double Norm(params ReadOnlySpan<double> parts)
    {
        double sum = 0;
        foreach (double part in parts)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}

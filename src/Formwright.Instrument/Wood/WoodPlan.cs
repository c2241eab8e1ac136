using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Instrument.Wood;

/// <summary>What the wood of an instrument does: movement, arches in dry and damp air, the board's stiffness and thickness.</summary>
/// <param name="Shop">Air of the shop.</param>
/// <param name="Dry">Driest air that the instrument is to stand.</param>
/// <param name="Wet">Dampest air.</param>
/// <param name="BestGluePercent">Humidity to glue at so that the arches stray least over the range, %.</param>
/// <param name="DampestGluePercent">Dampest shop with which every arch keeps half of itself in the driest air, %.</param>
/// <param name="GluePercent">Humidity to glue at: the drier of both, %.</param>
/// <param name="Movements">Parts between shop, dry and damp.</param>
/// <param name="Humidity">The shop's humidity sheet.</param>
/// <param name="SoundboardBars">Harmonic bars with their share of soundboard.</param>
/// <param name="BackBars">Back bars with their share of back.</param>
/// <param name="Board">What was measured of the soundboard.</param>
/// <param name="Thickness">How thick this board must be.</param>
public sealed record WoodPlan(
    Air Shop,
    Air Dry,
    Air Wet,
    double BestGluePercent,
    double DampestGluePercent,
    double GluePercent,
    IReadOnlyList<PartMovement> Movements,
    IReadOnlyList<HumidityRow> Humidity,
    IReadOnlyList<BarArch> SoundboardBars,
    IReadOnlyList<BarArch> BackBars,
    BoardMeasure Board,
    BoardThickness Thickness
)
{
    /// <summary>Share of an arch that must be left in the driest air (our choice: with less a back looks flat and a crack is near).</summary>
    public const double LeastArchShare = 0.5;

    /// <summary>A bar carries at most this width of plate, mm: what lies further off follows it little (our choice; shear lag is left out).</summary>
    public const double MostShareMm = 100;

    /// <summary>The wood of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="outline">Its outline.</param>
    /// <param name="back">Its back.</param>
    /// <param name="soundboard">Its soundboard.</param>
    /// <param name="board">What was measured of the soundboard's wood.</param>
    public static WoodPlan Of(
        InstrumentDesign design,
        Outline outline,
        BackPlan back,
        SoundboardPlan soundboard,
        BoardMeasure board
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(back);
        ArgumentNullException.ThrowIfNull(soundboard);
        ArgumentNullException.ThrowIfNull(board);
        ClimateDesign climate = design.Climate;
        Air shop = new(climate.TemperatureC, climate.ShopPercent);
        Air dry = new(climate.TemperatureC, Math.Min(climate.DryPercent, climate.WetPercent));
        Air wet = new(climate.TemperatureC, Math.Max(climate.DryPercent, climate.WetPercent));
        BarArch[] top = [.. SoundboardArches(design, soundboard, board.Timber, shop, dry, wet)];
        BarArch[] under = [.. BackArches(design, back, shop, dry, wet)];
        double best = ArchedPlate.BestGlueHumidity(
            climate.TemperatureC,
            dry.HumidityPercent,
            wet.HumidityPercent
        );
        double dampest = top.Concat(under)
            .Select(bar => bar.DampestGluePercent)
            .DefaultIfEmpty(100)
            .Min();
        return new WoodPlan(
            shop,
            dry,
            wet,
            best,
            dampest,
            Math.Min(best, dampest),
            [.. MovementsOf(design, outline, board.Timber, shop, dry, wet)],
            [.. Rows(design, outline, board.Timber, shop)],
            top,
            under,
            board,
            ThicknessOf(design, soundboard, board.Timber)
        );
    }

    private static IEnumerable<BarArch> SoundboardArches(
        InstrumentDesign design,
        SoundboardPlan soundboard,
        Timber plate,
        Air shop,
        Air dry,
        Air wet
    )
    {
        Brace[] bars = [.. soundboard.Braces.Where(brace => brace.Kind == BraceKind.HarmonicBar)];
        double[] at = [.. bars.Select(bar => bar.Line[0].X)];
        Timber wood = Timber.Of(design.Wood.Braces);
        foreach (Brace bar in bars)
        {
            yield return Arch(
                bar.Name,
                plate,
                design.Soundboard.ThicknessMm,
                wood,
                bar.Shape.WidthMm,
                bar.Shape.HeightMm,
                Share(at, bar.Line[0].X),
                bar.Gauge,
                shop,
                dry,
                wet
            );
        }
    }

    private static IEnumerable<BarArch> BackArches(
        InstrumentDesign design,
        BackPlan back,
        Air shop,
        Air dry,
        Air wet
    )
    {
        Timber plate = Timber.Of(design.Wood.Back);
        Timber wood = Timber.Of(design.Wood.BackBars);
        double[] at = [.. back.Bars.Select(bar => bar.AtMm)];
        for (int i = 0; i < back.Bars.Count; i++)
        {
            BackBar bar = back.Bars[i];
            yield return Arch(
                $"R{i + 1}",
                plate,
                design.Back.ThicknessMm,
                wood,
                bar.WidthMm,
                bar.HeightMm,
                Share(at, bar.AtMm),
                bar.Gauge,
                shop,
                dry,
                wet
            );
        }
    }

    private static BarArch Arch(
        string name,
        Timber plate,
        double plateMm,
        Timber bar,
        double widthMm,
        double heightMm,
        double shareMm,
        Gauge gauge,
        Air shop,
        Air dry,
        Air wet
    )
    {
        ArchedPlate arch = new(
            plate,
            plateMm,
            bar,
            widthMm,
            heightMm,
            Math.Max(shareMm, widthMm),
            gauge.MeanRadiusMm,
            gauge.LengthMm,
            shop.MoisturePercent
        );
        return new BarArch(
            name,
            arch,
            arch.In(dry),
            arch.In(shop),
            arch.In(wet),
            arch.DampestGlueHumidity(shop.TemperatureC, dry.HumidityPercent, LeastArchShare)
        );
    }

    // Half way to the neighbours on both sides; a lone side counts as the other.
    private static double Share(double[] at, double here)
    {
        double before = at.Where(u => u < here).DefaultIfEmpty(double.NaN).Max();
        double after = at.Where(u => u > here).DefaultIfEmpty(double.NaN).Min();
        double left = (here - before) / 2;
        double right = (after - here) / 2;
        left = double.IsNaN(left) ? right : left;
        right = double.IsNaN(right) ? left : right;
        double share = left + right;
        return double.IsNaN(share) ? MostShareMm : Math.Min(share, MostShareMm);
    }

    private static IEnumerable<PartMovement> MovementsOf(
        InstrumentDesign design,
        Outline outline,
        Timber board,
        Air shop,
        Air dry,
        Air wet
    )
    {
        double width = outline.Turns.Max(row => row.WidthMm);
        Timber back = Timber.Of(design.Wood.Back);
        Timber ribs = Timber.Of(design.Wood.Ribs);
        Timber neck = Timber.Of(design.Wood.Neck);
        Timber fingerboard = Timber.Of(design.Wood.Fingerboard);
        (string Part, double Size, double C)[] parts =
        [
            ("soundboard-width", width, board.AcrossPerPercent),
            ("soundboard-length", outline.BodyLengthMm, Movement.AlongGrainPerPercent),
            ("back-width", width, back.AcrossPerPercent),
            ("rib-height", design.Back.DepthTailMm, ribs.AcrossPerPercent),
            ("neck-width", design.Neck.WidthJoinMm, neck.AcrossPerPercent),
            ("fingerboard-width", design.Neck.WidthJoinMm, fingerboard.AcrossPerPercent),
            (
                "fingerboard-thickness",
                design.Fingerboard.ThicknessJoinMm,
                fingerboard.ThroughPerPercent
            ),
            ("bridge-width", design.Bridge.WidthMm, Timber.Of(design.Wood.Bridge).AcrossPerPercent),
        ];
        double from = shop.MoisturePercent;
        return parts.Select(part => new PartMovement(
            part.Part,
            part.Size,
            part.C,
            Movement.ChangeMm(part.Size, part.C, from, dry.MoisturePercent),
            Movement.ChangeMm(part.Size, part.C, from, wet.MoisturePercent)
        ));
    }

    private static IEnumerable<HumidityRow> Rows(
        InstrumentDesign design,
        Outline outline,
        Timber board,
        Air shop
    )
    {
        double width = outline.Turns.Max(row => row.WidthMm);
        double from = shop.MoisturePercent;
        Timber back = Timber.Of(design.Wood.Back);
        Timber fingerboard = Timber.Of(design.Wood.Fingerboard);
        for (int humidity = 20; humidity <= 80; humidity += 5)
        {
            double moisture = Moisture.Equilibrium(shop.TemperatureC, humidity);
            yield return new HumidityRow(
                humidity,
                moisture,
                Movement.ChangeMm(width, board.AcrossPerPercent, from, moisture),
                Movement.ChangeMm(width, back.AcrossPerPercent, from, moisture),
                Movement.ChangeMm(
                    design.Neck.WidthJoinMm,
                    fingerboard.AcrossPerPercent,
                    from,
                    moisture
                )
            );
        }
    }

    // Without targets of the maker's own: what the species' average board has at the design's thickness.
    private static BoardThickness ThicknessOf(
        InstrumentDesign design,
        SoundboardPlan soundboard,
        Timber board
    )
    {
        PartWoodDesign part = design.Wood.Soundboard;
        Timber average = Timber.Of(
            new PartWoodDesign(part.Species, part.Cut, null, null, null, null)
        );
        double thickness = design.Soundboard.ThicknessMm;
        BoardTargetDesign target = design.BoardTarget;
        return BoardThickness.For(
            board,
            soundboard.AreaMm2,
            target.StiffnessLongNm ?? average.PlateLongNmm(thickness) / 1000,
            target.StiffnessCrossNm ?? average.PlateAcrossNmm(thickness) / 1000,
            target.MassG
                ?? BoardThickness.MassG(average.DensityKgPerM3, soundboard.AreaMm2, thickness)
        );
    }

    /// <summary>What breaks a rule.</summary>
    public IEnumerable<Finding> Findings(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return WoodChecks.Of(this, design);
    }
}

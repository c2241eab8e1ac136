using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body.Back;

/// <summary>The back: its arch, its bars, its mass.</summary>
/// <param name="Depth">Depth of its inner face under the soundboard's at the rim, mm.</param>
/// <param name="DeepestMm">Greatest depth on the centreline, mm.</param>
/// <param name="DeepestAtMm">Its station, mm.</param>
/// <param name="LongRiseMm">Rise of the arch along the centreline over its chord, mm.</param>
/// <param name="CrossRiseMm">Rise of the arch across at the lower bout, mm.</param>
/// <param name="VolumeL">Volume of the box, inside, without blocks, bars and linings, litres.</param>
/// <param name="Bars">Bars, from heel to tail.</param>
/// <param name="MassG">Mass of the plate without bars, g.</param>
public sealed record BackPlan(
    BackField Depth,
    double DeepestMm,
    double DeepestAtMm,
    double LongRiseMm,
    double CrossRiseMm,
    double VolumeL,
    IReadOnlyList<BackBar> Bars,
    double MassG
)
{
    /// <summary>The back of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="outline">Its outline.</param>
    /// <param name="dome">Height of the soundboard over the datum, for the volume.</param>
    public static BackPlan Of(InstrumentDesign design, Outline outline, IHeightField dome)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(dome);
        BackDesign back = design.Back;
        double body = outline.BodyLengthMm;
        BackField depth = new(back, body, Whole(outline));
        double chord = Math.Sqrt((body * body) + Math.Pow(back.DepthTailMm - back.DepthHeelMm, 2));
        OutlineRow widest = outline.Turns.MaxBy(row => row.WidthMm);
        Point edge = new(widest.UMm, widest.WidthMm / 2);
        Timber plate = Timber.Of(design.Wood.Back);
        return new BackPlan(
            depth,
            depth.Peak.HeightMm,
            depth.Peak.Place.X,
            back.LongRadiusMm > 0 ? Sagitta.OfRadius(back.LongRadiusMm, chord) : 0,
            depth.HeightAt(new Point(edge.X, 0)) - depth.HeightAt(edge),
            BoxVolume.Litres(outline, depth, dome, design.Ribs.ThicknessMm),
            [
                .. back
                    .Bars.Where(bar => bar.AtMm < body)
                    .Select(bar => Bar(design, outline, depth, bar)),
            ],
            outline.AreaMm2 * back.ThicknessMm * plate.DensityKgPerM3 * 1e-6
        );
    }

    private static BackBar Bar(
        InstrumentDesign design,
        Outline outline,
        BackField depth,
        BackBarDesign bar
    )
    {
        double half = Math.Max(
            (outline.WidthAt(bar.AtMm) / 2)
                - InnerFace.RibAcross(outline, bar.AtMm, design.Ribs.ThicknessMm),
            1
        );
        Gauge gauge = Gauge.Of(depth.HeightAt, [new(bar.AtMm, -half), new(bar.AtMm, half)]);
        BarShape shape = new(
            bar.WidthMm,
            bar.HeightMm,
            Math.Min(design.Bracing.BarEndHeightMm, bar.HeightMm),
            design.Bracing.BarScoopMm,
            BraceSection.Square
        );
        return new BackBar(
            bar.AtMm,
            half,
            bar.WidthMm,
            bar.HeightMm,
            shape.EndHeightMm,
            shape.ScoopFor(2 * half),
            gauge,
            bar.HeightMm + Math.Abs(gauge.MostMm),
            shape.VolumeMm3(2 * half) * Timber.Of(design.Wood.BackBars).DensityKgPerM3 * 1e-6
        );
    }

    private static Region Whole(Outline outline)
    {
        Polyline all = outline.Closed.ToPolyline(SoundboardDome.EdgeToleranceMm);
        return Region.Of(all.Points, all.ErrorMm);
    }
}

using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Trace;

namespace Formwright.Packs.Report;

/// <summary>What a trace came to.</summary>
public sealed record TraceReport(
    [property: Description("Name of the file.")] string File,
    [property: Description("mm in one unit of the file.")] double UnitMm,
    [property: Description("Whether the file itself says so.")] bool UnitIsStated,
    [property: Description("By what lengths were multiplied to meet a known length.")]
        double ScaleFactor,
    [property: Description(
        "Where the centreline comes from: given, table, symmetry, ends or straight-edge."
    )]
        string Centreline,
    [property: Description(
        "Direction of the centreline in the file, heel to tail, degrees from x towards y (up)."
    )]
        double AngleDeg,
    [property: Description(
        "Root mean square of half the distance between one side and the other mirrored, mm."
    )]
        double SymmetryResidualMm,
    [property: Description("Standard deviation of a traced point across the curve, mm.")]
        double PointNoiseMm,
    [property: Description("Lowest bump of 10 mm length that stands out of the noise, mm.")]
        double Floor10Mm,
    [property: Description("Lowest bump of 40 mm length that stands out of the noise, mm.")]
        double Floor40Mm,
    [property: Description("Heel to tail, mm.")] double BodyLengthMm,
    [property: Description("Upper bout; absent where there is none.")]
        TraceFeatureReport? UpperBout,
    [property: Description("Waist; absent where there is none.")] TraceFeatureReport? Waist,
    [property: Description("Lower bout, or the widest place.")] TraceFeatureReport? LowerBout,
    [property: Description("Width of a straight piece at the heel, mm.")] double HeelFlatMm,
    [property: Description("Width of a straight piece at the tail, mm.")] double TailFlatMm,
    [property: Description("Length of half the fair outline, mm.")] double HalfPerimeterMm,
    [property: Description("Area within the fair outline, mm².")] double AreaMm2,
    [property: Description("Euler-spiral segments of half the fair outline.")] int Segments,
    [property: Description("Largest distance of the segments from the fair curve, mm.")]
        double SegmentsMm,
    [property: Description("Whether that is within the asked tolerance.")] bool IsWithinTolerance,
    [property: Description(
        "Root mean square distance of the points outside bumps from the fair outline, mm."
    )]
        double RmsMm,
    [property: Description("Largest such distance, mm.")] double LargestMm,
    [property: Description(
        "Whether the features alone say it all: the fairest curve through them meets the trace."
    )]
        bool IsPlain,
    [property: Description("Bumps, the worst first.")] IReadOnlyList<BumpReport> Bumps,
    [property: Description("Half widths of both sides.")]
        IReadOnlyList<SideDifferenceReport> Differences,
    [property: Description(
        "Stretches where the trace turns so sharply that a bump can't be told from its shape."
    )]
        IReadOnlyList<StretchReport> Unsure
)
{
    public static TraceReport Of(TraceResult trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        TracedFeatures features = trace.Features;
        return new TraceReport(
            Path.GetFileName(trace.File.Name),
            trace.File.Unit.MmPerUnit,
            trace.File.Unit.IsStated,
            trace.ScaleFactor,
            Choices.NameOf(trace.Alignment.Source),
            Degrees(trace.Alignment.AngleRad),
            trace.Alignment.ResidualMm,
            trace.Floor.PointNoiseMm,
            trace.Floor.HeightMm(10),
            trace.Floor.HeightMm(40),
            features.BodyLengthMm,
            TraceFeatureReport.Of(features.UpperBout),
            TraceFeatureReport.Of(features.Waist),
            TraceFeatureReport.Of(features.LowerBout),
            features.HeelFlatMm,
            features.TailFlatMm,
            trace.Fair.HalfPerimeterMm,
            trace.Fair.AreaMm2,
            trace.Misfit.Segments,
            trace.Misfit.SegmentsMm,
            trace.Misfit.IsWithinTolerance,
            trace.Misfit.RmsMm,
            trace.Misfit.LargestMm,
            trace.Plain is not null,
            [.. trace.Bumps.Select(BumpReport.Of)],
            [
                .. trace.Differences.Select(row => new SideDifferenceReport(
                    row.UMm,
                    row.BassMm,
                    row.TrebleMm,
                    row.TrebleOverBassMm
                )),
            ],
            [
                .. trace.Unsure.Select(stretch => new StretchReport(
                    BumpReport.SideOf(stretch.Side),
                    stretch.FromUMm,
                    stretch.ToUMm
                )),
            ]
        );
    }

    private static double Degrees(double rad) => Math.IEEERemainder(rad * 180 / Math.PI, 360);
}

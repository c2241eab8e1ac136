using System.ComponentModel;
using Formwright.Instrument.Body.Ribs;

namespace Formwright.Packs.Report;

/// <summary>The ribs' figures; lengths at mid-thickness, along from the tail.</summary>
public sealed record RibsReport(
    [property: Description("Length of one rib from end to end, mm.")] double LengthMm,
    [property: Description("Smallest height, mm.")] double LeastHeightMm,
    [property: Description("Greatest height, mm.")] double MostHeightMm,
    [property: Description("Length of the blank with its allowances, mm.")] double BlankLengthMm,
    [property: Description("Width of the blank with its allowance, mm.")] double BlankWidthMm,
    [property: Description("Area of one rib, mm².")] double AreaMm2,
    [property: Description("Length of a lining at the soundboard, between the blocks, mm.")]
        double LiningFrontMm,
    [property: Description("Length of a lining at the back, mm.")] double LiningBackMm,
    [property: Description(
        "Greatest distance of kerfs in a lining, with which they close at the tightest bend, mm."
    )]
        double KerfStepMm,
    [property: Description(
        "Glue blocks along the soundboard of one rib; 0 where there is a lining."
    )]
        int GlueBlocks,
    [property: Description("Bends from the tail.")] IReadOnlyList<RibBendReport> Bends,
    [property: Description("Height along the rib about every 20 mm.")]
        IReadOnlyList<RibHeightReport> Pattern
)
{
    internal static RibsReport Of(RibPlan ribs)
    {
        List<RibHeightReport> pattern = [];
        foreach (RibPoint point in ribs.Points)
        {
            if (
                pattern.Count == 0
                || point.AlongMm - pattern[^1].AlongMm >= 20
                || point == ribs.Points[^1]
            )
            {
                pattern.Add(new RibHeightReport(point.AlongMm, point.FrontMm, point.BackMm));
            }
        }

        return new RibsReport(
            ribs.LengthMm,
            ribs.LeastHeightMm,
            ribs.MostHeightMm,
            ribs.BlankLengthMm,
            ribs.BlankWidthMm,
            ribs.AreaMm2,
            ribs.Lining.FrontMm,
            ribs.Lining.BackMm,
            ribs.Lining.KerfStepMm,
            ribs.Lining.GlueBlocks,
            [
                .. ribs.Bends.Select(bend => new RibBendReport(
                    bend.FromMm,
                    bend.ToMm,
                    bend.IsWaist,
                    bend.TightestMm,
                    bend.StrainPercent,
                    bend.ThicknessThatBendsMm
                )),
            ],
            pattern
        );
    }
}

using System.ComponentModel;
using Formwright.Jigs.Workboard;

namespace Formwright.Packs.Report;

/// <summary>The workboard's figures.</summary>
public sealed record WorkboardReport(
    [property: Description("Drop of the neck surface at the nut, mm.")] double RampMm,
    [property: Description("Greatest depth of the relief, mm.")] double ReliefMm,
    [property: Description(
        "What a straight edge resting at tail and join shows along the centreline."
    )]
        IReadOnlyList<GapReport> GapTable
)
{
    internal static WorkboardReport Of(WorkboardPlan plan) =>
        new(
            plan.RampMm,
            plan.Relief.DeepestMm,
            [
                .. plan.GapTable.Select(row => new GapReport(
                    row.Place,
                    row.XMm,
                    row.GapMm,
                    row.ToleranceMm
                )),
            ]
        );
}

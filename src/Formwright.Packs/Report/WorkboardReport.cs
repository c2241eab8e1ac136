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
        IReadOnlyList<GapReport> GapTable,
    [property: Description("How the relief is made: carved, cork-overlay or plywood-overlay.")]
        string ReliefMethod,
    [property: Description("What is left under the dome at its highest, mm.")] double ClearanceMm,
    [property: Description(
        "Depth and what is left under the dome, every 50 mm along and 30 mm to both sides."
    )]
        IReadOnlyList<ClearanceReport> Clearances,
    [property: Description("What lies open under the ends of the braces.")]
        IReadOnlyList<BraceEndReport> BraceEnds,
    [property: Description("Holes to drill to depth before a relief is carved.")]
        IReadOnlyList<SpotReport> Spots
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
            ],
            plan.Relief.Method switch
            {
                Design.Sections.ReliefMethod.CorkOverlay => "cork-overlay",
                Design.Sections.ReliefMethod.PlywoodOverlay => "plywood-overlay",
                _ => "carved",
            },
            plan.Relief.ClearanceMm,
            [
                .. plan.Clearances.Select(row => new ClearanceReport(
                    row.XMm,
                    row.AcrossMm,
                    row.DepthMm,
                    row.ClearanceMm
                )),
            ],
            [
                .. plan.BraceEnds.Select(end => new BraceEndReport(
                    end.Brace,
                    end.XMm,
                    end.YBMm,
                    end.GapMm,
                    end.IsHeld
                )),
            ],
            [.. plan.Spots.Select(spot => new SpotReport(spot.XMm, spot.YBMm, spot.DepthMm))]
        );
}

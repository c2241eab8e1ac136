using System.ComponentModel;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs;

namespace Formwright.Packs.Report;

/// <summary>Every computed figure of one design. Names become snake_case with the unit as suffix; the schema in the documentation is made from these types.</summary>
public sealed record DesignReport(
    [property: Description("Name of the instrument.")] string Name,
    [property: Description("Outline; absent where its features can't be met.")]
        OutlineReport? Outline,
    [property: Description("Dome of the soundboard, over the rim.")] DomeReport? Dome,
    [property: Description("Workboard.")] WorkboardReport? Workboard,
    [property: Description("Mould.")] MouldReport? Mould,
    [property: Description("Rules that the design breaks or nearly breaks, gravest first.")]
        IReadOnlyList<FindingReport> Findings
)
{
    /// <summary>The report of a design.</summary>
    /// <param name="name">Name of the instrument.</param>
    /// <param name="guitar">The instrument, or null where it can't be computed.</param>
    /// <param name="tooling">Its tooling, null without an instrument.</param>
    /// <param name="findings">All findings.</param>
    public static DesignReport Of(
        string name,
        Guitar? guitar,
        Tooling? tooling,
        IReadOnlyList<Finding> findings
    ) =>
        new(
            name,
            guitar is null ? null : OutlineReport.Of(guitar),
            guitar is null ? null : DomeReport.Of(guitar),
            tooling is null ? null : WorkboardReport.Of(tooling.Workboard),
            tooling is null ? null : MouldReport.Of(tooling.Mould),
            [.. findings.Select(FindingReport.Of)]
        );
}

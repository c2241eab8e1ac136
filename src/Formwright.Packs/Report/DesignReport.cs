using System.ComponentModel;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>Every computed figure of one design. Names become snake_case with the unit as suffix; the schema in the documentation is made from these types.</summary>
public sealed record DesignReport(
    [property: Description("Name of the instrument.")] string Name,
    [property: Description("Outline; absent where its features can't be met.")]
        OutlineReport? Outline,
    [property: Description("Dome of the soundboard, over the rim.")] DomeReport? Dome,
    [property: Description("Neck and action.")] ActionReport? Action,
    [property: Description("Strings.")] StringsReport? Strings,
    [property: Description("Frets, the nut first.")] IReadOnlyList<FretReport>? Frets,
    [property: Description("Ribs.")] RibsReport? Ribs,
    [property: Description("Back.")] BackReport? Back,
    [property: Description("Bars and braces of the soundboard.")]
        IReadOnlyList<BraceReport>? Braces,
    [property: Description("The soundboard as a plate; absent where it can't be computed.")]
        PlateReport? Plate,
    [property: Description("Wood and humidity.")] WoodReport? Wood,
    [property: Description("Workboard.")] WorkboardReport? Workboard,
    [property: Description("Spine and feet under the workboard.")] SpineReport? Spine,
    [property: Description("Mould.")] MouldReport? Mould,
    [property: Description("Bracket jig; absent unless the design asks for one.")] JigReport? Jig,
    [property: Description("Stock, cut list, hardware and cost of the tooling.")]
        StockReport? Stock,
    [property: Description("Order of work.")] OrderReport? OrderOfWork,
    [property: Description("Rules that the design breaks or nearly breaks, gravest first.")]
        IReadOnlyList<FindingReport> Findings
)
{
    /// <summary>The report of a study.</summary>
    public static DesignReport Of(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        // The nest takes longest of all: begun first, asked for last.
        Task<StockPlan?> nest = Task.Run(() => study.Stock);
        return new DesignReport(
            study.Design.Identity.Name,
            study.Guitar is { } guitar ? OutlineReport.Of(guitar) : null,
            study.Guitar is { } domed ? DomeReport.Of(domed) : null,
            study.Action is { } action ? ActionReport.Of(action) : null,
            study.Action is { } strung ? StringsReport.Of(strung) : null,
            study.Action is { } fretted
                ? [.. fretted.Frets.Select(row => new FretReport(row.Fret, row.FromNutMm))]
                : null,
            study.Body is { } body ? RibsReport.Of(body.Ribs) : null,
            study.Body is { } backed ? BackReport.Of(backed.Back) : null,
            study.Body is { } braced ? [.. braced.Soundboard.Braces.Select(BraceReport.Of)] : null,
            study is { Plate: { } plate, Action: { } pulled }
                ? PlateReport.Of(plate, pulled)
                : null,
            study.Body is { } wooden ? WoodReport.Of(wooden.Wood) : null,
            study.Tooling is { } tooling ? WorkboardReport.Of(tooling.Workboard) : null,
            study.Tooling is { } carried ? SpineReport.Of(carried.Spine) : null,
            study.Tooling is { } jigs ? MouldReport.Of(jigs.Mould) : null,
            study.Tooling?.Jig is { } jig ? JigReport.Of(jig) : null,
            nest.GetAwaiter().GetResult() is { } stock ? StockReport.Of(stock) : null,
            study.Order is { } order ? OrderReport.Of(order) : null,
            [.. study.AllFindings.Select(FindingReport.Of)]
        );
    }
}

using Formwright.Design;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Plates;
using Formwright.Jigs.Steps;
using Formwright.Jigs.Stock;
using Formwright.Packs.Report;
using Formwright.Sheets;

namespace Formwright.Packs;

/// <summary>A design with everything computed from it, but no files yet.</summary>
/// <param name="Design">The design.</param>
/// <param name="Guitar">The instrument, null where it can't be.</param>
/// <param name="Action">Its neck and action, null without an instrument.</param>
/// <param name="Body">Its ribs, back, braces, bridge, neck blank and wood, null without an instrument.</param>
/// <param name="Plate">Its soundboard as a plate, computed when first asked for; null without an instrument.</param>
/// <param name="Tooling">Its tooling, null without an instrument.</param>
/// <param name="Findings">All findings, gravest first, then in trade order.</param>
/// <param name="Cores">On how many cores at most its stock is nested; -1 for all.</param>
public sealed record Study(
    InstrumentDesign Design,
    Guitar? Guitar,
    NeckAndAction? Action,
    BodyPlan? Body,
    SoundboardPlate? Plate,
    Jigs.Tooling? Tooling,
    IReadOnlyList<Finding> Findings,
    int Cores = -1
)
{
    private readonly Lazy<StockPlan?> stock = new(() =>
        Guitar is not null && Tooling is not null
            ? StockPlanner.Of(
                Design.Stock,
                Tooling.Parts,
                HardwareList.Of(Guitar, Tooling),
                cores: Cores
            )
            : null
    );

    /// <summary>What the tooling is cut from: nested when it is first asked for, which takes most of the time of a report; null without tooling.</summary>
    public StockPlan? Stock => stock.Value;

    /// <summary>The order of work for its tooling, null without tooling.</summary>
    public WorkOrder? Order =>
        Guitar is not null && Tooling is not null ? WorkOrder.Of(Guitar, Tooling) : null;

    /// <summary>All findings with those of the nest, gravest first. It is nested only where the sheets at hand may not do.</summary>
    public IReadOnlyList<Finding> AllFindings =>
        StockCheck.MayRunShort(Design.Stock) && Stock is { Findings.Count: > 0 }
            ? [.. Findings.Concat(Stock.Findings).OrderByDescending(finding => finding.Severity)]
            : Findings;

    /// <summary>Whether a finding says that it can't be built as it stands.</summary>
    public bool IsStopped => Findings.Any(finding => finding.Severity == Severity.Stop);

    /// <summary>The report of its figures.</summary>
    public DesignReport Report => DesignReport.Of(this);

    /// <summary>Its sheets in trade order, in the language of the thread's UI culture; none without an instrument.</summary>
    /// <param name="withStock">Whether the sheets of the stock are among them, for which it must be nested.</param>
    public IReadOnlyList<NamedSheet> Sheets(bool withStock = true)
    {
        if (Guitar is null || Action is null || Body is null || Tooling is null)
        {
            return [];
        }

        // It is nested while the other sheets are made.
        Task<StockPlan?>? nest = withStock ? Task.Run(() => Stock) : null;
        return SheetSet.Of(
            Guitar,
            Action,
            Body,
            Tooling,
            Plate,
            nest is null ? null : () => nest.GetAwaiter().GetResult()
        );
    }

    /// <summary>The sheets made without those of the stock, with them: it is nested, the others are not made again.</summary>
    /// <param name="sheets">What <see cref="Sheets"/> made without the stock, in the same language.</param>
    public IReadOnlyList<NamedSheet> WithStock(IReadOnlyList<NamedSheet> sheets) =>
        Guitar is not null && Stock is { } nested
            ? SheetSet.WithStock(sheets, Guitar, nested)
            : sheets;

    /// <summary>One of its sheets, not numbered, without making the others; null where there is none of that name.</summary>
    public NamedSheet? Sheet(string id) =>
        Guitar is not null && Action is not null && Body is not null && Tooling is not null
            ? SheetSet.One(
                id,
                Guitar,
                Action,
                Body,
                Tooling,
                Plate,
                SheetSet.IsOfStock(id) ? Stock : null
            )
            : null;

    /// <summary>Computes a design.</summary>
    /// <param name="design">A design that was read without diagnostics.</param>
    /// <param name="earlier">A study of an earlier state: what the change can't touch is taken from it.</param>
    /// <param name="builds">Builds of the chance that the action lands in its band; null for the design's number, fewer while something is dragged.</param>
    /// <param name="cores">On how many cores at most its stock is nested, which takes longest; -1 for all.</param>
    public static Study Of(
        InstrumentDesign design,
        Study? earlier = null,
        long? builds = null,
        int cores = -1
    )
    {
        GuitarResult result = Guitar.Build(design, earlier?.Guitar);
        // Tooling needs neither plate nor action, which take as long. While something is dragged it waits for them: the other core is the hand's.
        Task<Jigs.Tooling?>? beside = builds is null ? Task.Run(Made) : null;
        SoundboardPlate? plate = result.Guitar is { } bent
            ? SoundboardPlate.Of(bent, earlier?.Plate, isPassing: builds is not null)
            : null;
        NeckAndAction? action = result.Guitar is { } built
            ? NeckAndAction.Of(built, builds, plate)
            : null;
        BodyPlan? body =
            result.Guitar is { } boxed && action is not null
                ? BodyPlan.Of(boxed, [.. action.StringRows.Select(row => row.SaddleMm)])
                : null;
        Jigs.Tooling? tooling = beside is null ? Made() : beside.GetAwaiter().GetResult();
        if (tooling is not null && body is not null)
        {
            tooling = tooling.WithBridge(body.Guitar, body.Bridge);
        }

        Finding[] findings =
        [
            .. result
                .Findings.Concat(action?.Findings ?? [])
                .Concat(body?.Findings ?? [])
                .Concat(
                    plate is not null && action is not null ? PlateRules.Check(plate, action) : []
                )
                .Concat(tooling?.Findings ?? [])
                .Concat(tooling is null ? [] : StockCheck.Of(design.Stock, tooling.Parts))
                .OrderByDescending(finding => finding.Severity),
        ];
        return new Study(design, result.Guitar, action, body, plate, tooling, findings, cores);

        Jigs.Tooling? Made() =>
            result.Guitar is not { } guitar ? null
            : ReferenceEquals(design, earlier?.Design) ? earlier.Tooling
            : Jigs.Tooling.Of(guitar);
    }
}

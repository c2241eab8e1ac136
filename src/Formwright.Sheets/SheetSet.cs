using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Plates;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Steps;
using Formwright.Jigs.Stock;
using Formwright.Jigs.Workboard;
using Formwright.Sheets.Action;
using Formwright.Sheets.Body;
using Formwright.Sheets.Brackets;
using Formwright.Sheets.Outline;
using Formwright.Sheets.Steps;
using Formwright.Sheets.Stock;
using Formwright.Sheets.Tooling;

namespace Formwright.Sheets;

/// <summary>All sheets of one design, in trade order. Their language is the thread's UI culture.</summary>
public static class SheetSet
{
    /// <summary>The sheets, numbered.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="action">Its neck and action.</param>
    /// <param name="body">Its body and wood.</param>
    /// <param name="tooling">Its tooling.</param>
    /// <param name="plate">Its soundboard as a plate; null leaves its sheets out.</param>
    /// <param name="nest">What the tooling is cut from, asked for when all other sheets are made; null leaves its sheets out.</param>
    public static IReadOnlyList<NamedSheet> Of(
        Guitar guitar,
        NeckAndAction action,
        BodyPlan body,
        Jigs.Tooling tooling,
        SoundboardPlate? plate = null,
        Func<StockPlan?>? nest = null
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(action);
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(tooling);
        List<NamedSheet> sheets =
        [
            OutlineSheet.Of(guitar),
            .. ActionSheets.Of(guitar, action),
            .. BodySheets.Of(guitar, body, action, plate),
            .. TemplateSheets.Of(guitar, tooling),
            WorkboardSheet.Of(guitar, tooling.Workboard),
            .. ReliefSheets(guitar, tooling.Workboard),
            SpineSheet.Of(guitar, tooling.Spine),
            GapSheet.Of(guitar, tooling.Workboard),
        ];
        if (tooling.Mould.Parts.Count > 0)
        {
            sheets.Add(MouldSheet.Of(guitar, tooling.Mould));
        }

        if (tooling.Jig is { } jig)
        {
            sheets.AddRange(JigSheets.Of(jig));
        }

        sheets.AddRange(OrderSheets.Of(guitar, WorkOrder.Of(guitar, tooling)));
        return nest?.Invoke() is { } stock ? WithStock(sheets, guitar, stock) : Numbered(sheets);
    }

    /// <summary>Sheets with those of the stock behind them, numbered anew.</summary>
    /// <param name="sheets">All other sheets of the design.</param>
    /// <param name="guitar">The instrument.</param>
    /// <param name="stock">What the tooling is cut from.</param>
    public static IReadOnlyList<NamedSheet> WithStock(
        IReadOnlyList<NamedSheet> sheets,
        Guitar guitar,
        StockPlan stock
    )
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(stock);
        return Numbered([.. sheets, .. StockSheets(guitar, stock)]);
    }

    private static IEnumerable<NamedSheet> ReliefSheets(Guitar guitar, WorkboardPlan plan)
    {
        if (plan.Spots.Count > 0)
        {
            yield return SpotSheet.Of(guitar, plan);
        }

        if (plan.Relief.Method != ReliefMethod.Carved)
        {
            yield return OverlaySheet.Of(guitar, plan);
        }

        foreach (string id in new[] { "relief-gauge", "support-block" })
        {
            Part[] parts =
            [
                .. plan.Parts.Where(part => part.Id.StartsWith(id, StringComparison.Ordinal)),
            ];
            if (parts.Length > 0)
            {
                yield return ProfileSheet.Of(guitar, $"{id}s", parts);
            }
        }
    }

    private static IEnumerable<NamedSheet> StockSheets(Guitar guitar, StockPlan stock) =>
        stock
            .Sheets.Select(nest => NestSheet.Of(guitar, nest))
            .Prepend(CutListSheet.Of(guitar, stock));

    /// <summary>One sheet of the set, not numbered, without making the others; null where there is none of that name.</summary>
    public static NamedSheet? One(
        string id,
        Guitar guitar,
        NeckAndAction action,
        BodyPlan body,
        Jigs.Tooling tooling,
        SoundboardPlate? plate = null,
        StockPlan? stock = null
    )
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(tooling);
        return id switch
        {
            "outline" => OutlineSheet.Of(guitar),
            "humidity" => HumiditySheet.Of(guitar, body),
            "board" => BoardSheet.Of(guitar, body),
            "soundboard" => SoundboardSheet.Of(guitar, body),
            "brace-gauges" => BraceGaugeSheet.Of(guitar, body),
            "rosette" => RosetteSheet.Of(guitar, body),
            "neck" => NeckSheet.Of(guitar, body),
            "ribs" => RibSheet.Of(guitar, body),
            "bending" => BendingSheet.Of(guitar, body),
            "blocks" => BlockSheet.Of(guitar, body),
            "back" => BackSheet.Of(guitar, body),
            "bridge" => BridgeSheet.Of(guitar, body),
            "workboard" => WorkboardSheet.Of(guitar, tooling.Workboard),
            "gaps" => GapSheet.Of(guitar, tooling.Workboard),
            "spine" => SpineSheet.Of(guitar, tooling.Spine),
            "template-placement" or "dome-gauges" => TemplateSheets
                .Of(guitar, tooling)
                .FirstOrDefault(named => named.Id == id),
            "spots" or "overlay" or "relief-gauges" or "support-blocks" => ReliefSheets(
                    guitar,
                    tooling.Workboard
                )
                .FirstOrDefault(named => named.Id == id),
            "plate" or "modes" or "thickness" => BodySheets
                .Of(guitar, body, action, plate)
                .FirstOrDefault(named => named.Id == id),
            "mould" when tooling.Mould.Parts.Count > 0 => MouldSheet.Of(guitar, tooling.Mould),
            "jig-board" or "jig-bracket" or "jig-setting" => tooling.Jig is { } jig
                ? JigSheets.Of(jig).FirstOrDefault(named => named.Id == id)
                : null,
            _ when id.StartsWith("order", StringComparison.Ordinal) => OrderSheets
                .Of(guitar, WorkOrder.Of(guitar, tooling))
                .FirstOrDefault(named => named.Id == id),
            _ when IsOfStock(id) => stock is null
                ? null
                : StockSheets(guitar, stock).FirstOrDefault(named => named.Id == id),
            _ => Of(guitar, action, body, tooling, plate).FirstOrDefault(named => named.Id == id),
        };
    }

    /// <summary>Whether a sheet shows the stock, which must be nested for it.</summary>
    public static bool IsOfStock(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id == "cut-list" || id.StartsWith("nest-", StringComparison.Ordinal);
    }

    private static NamedSheet[] Numbered(List<NamedSheet> sheets) =>
        [.. sheets.Select((named, i) => Numbered(named, i + 1, sheets.Count))];

    private static NamedSheet Numbered(NamedSheet named, int number, int count)
    {
        TitleBlock title = named.Sheet.Title with { SheetNumber = number, SheetCount = count };
        return named with { Sheet = named.Sheet with { Title = title } };
    }
}

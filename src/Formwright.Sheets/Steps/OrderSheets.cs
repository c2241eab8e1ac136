using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Steps;

namespace Formwright.Sheets.Steps;

/// <summary>The order of work on as many A4 pages as it takes, to hang up at the bench and tick off.</summary>
internal static class OrderSheets
{
    private const double GapMm = 4.5;

    public static IReadOnlyList<NamedSheet> Of(Guitar guitar, WorkOrder order)
    {
        TitleBlock title = Titles.Of(guitar, "sheet.order", "document.check");
        Sheet empty = new(title, Paper.A4);
        Box area = empty.Area;
        List<List<Block>> pages =
        [
            [],
        ];
        double room = area.HeightMm;
        foreach (Block[] together in Groups(order, area.WidthMm))
        {
            double need = together.Sum(block => block.Size.HeightMm + GapMm);
            if (need - GapMm > room && pages[^1].Count > 0)
            {
                pages.Add([]);
                room = area.HeightMm;
            }

            pages[^1].AddRange(together);
            room -= need;
        }

        return
        [
            .. pages.Select(
                (page, i) =>
                    new NamedSheet(
                        pages.Count == 1 ? "order" : $"order-{i + 1}",
                        empty.Add(Flow.Down(new Point(area.LeftMm, area.TopMm), GapMm, [.. page])),
                        IsTiled: false
                    )
            ),
        ];
    }

    // A heading stays with its first step; the cautions come last, all at once.
    private static IEnumerable<Block[]> Groups(WorkOrder order, double widthMm)
    {
        WorkPiece? piece = null;
        foreach (Step step in order.Steps)
        {
            StepBlock block = BlockOf(order, step, widthMm);
            if (step.Piece == piece)
            {
                yield return [block];
            }
            else
            {
                piece = step.Piece;
                string heading = JigsWords.Of[$"piece.{Choices.NameOf(step.Piece)}"];
                yield return [new Notes("", [heading], widthMm) { Style = TextStyle.Title }, block];
            }
        }

        yield return
        [
            new Notes(
                "",
                [SheetsWords.Of.Format("order.waits", order.LongestWaitHours / 24)],
                widthMm
            ),
            new Cautions(
                [
                    .. order
                        .Steps.SelectMany(step => step.Cares)
                        .Distinct()
                        .Order()
                        .Select(care =>
                        {
                            string key = $"care.{Choices.NameOf(care)}";
                            return $"{JigsWords.Of[key]} {JigsWords.Of[$"{key}.source"]}";
                        }),
                ],
                widthMm
            ),
        ];
    }

    private static StepBlock BlockOf(WorkOrder order, Step step, double widthMm)
    {
        List<string> texts = [step.How];
        List<string> about = [];
        if (step.Needs.Length > 0)
        {
            about.Add(
                SheetsWords.Of.Format(
                    "order.after",
                    string.Join(", ", step.Needs.Select(order.NumberOf).Order())
                )
            );
        }

        if (step.Tools.Length > 0)
        {
            about.Add(
                SheetsWords.Of.Format(
                    "order.tools",
                    string.Join(
                        ", ",
                        step.Tools.Select(tool => JigsWords.Of[$"tool.{Choices.NameOf(tool)}"])
                    )
                )
            );
        }

        if (about.Count > 0)
        {
            texts.Add(string.Join(" ", about));
        }

        if (step.Wait is { } wait)
        {
            IReadOnlyList<Step> meanwhile = order.Meanwhile(step);
            texts.Add(
                meanwhile.Count == 0
                    ? SheetsWords.Of.Format("order.wait", wait.Text)
                    : SheetsWords.Of.Format(
                        "order.wait-meanwhile",
                        wait.Text,
                        string.Join(", ", meanwhile.Select(order.NumberOf))
                    )
            );
        }

        return new StepBlock(
            $"{order.NumberOf(step)} · {step.Title}",
            texts,
            [.. step.Gates.Select(gate => gate.Text)],
            widthMm
        );
    }
}

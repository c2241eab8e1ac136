using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.NeckBlanks;

namespace Formwright.Sheets.Body;

/// <summary>What is sawn for a neck, and the figures of its cuts.</summary>
internal static class NeckPieces
{
    /// <summary>The table.</summary>
    public static Table Of(Guitar guitar, NeckBlank blank)
    {
        HeadDesign head = guitar.Design.Head;
        List<IReadOnlyList<string>> rows =
        [
            [
                SheetsWords.Of["neck.board"],
                Size(blank.BoardLengthMm, blank.BoardWidthMm, blank.BoardThicknessMm),
            ],
        ];
        if (blank.StackPieces > 0)
        {
            rows.Add([
                SheetsWords.Of.Format("neck.stack", blank.StackPieces),
                Size(
                    blank.StackLengthMm,
                    guitar.Design.Heel.WidthMm + 4,
                    guitar.Design.Heel.LayerMm
                ),
            ]);
        }

        if (blank.ScarfMm > 0)
        {
            rows.Add([SheetsWords.Of["neck.scarf"], $"{Figures.Fixed(blank.ScarfMm, 1)} mm"]);
            rows.Add([
                SheetsWords.Of["neck.scarf-run"],
                $"{Figures.Fixed(blank.ScarfRunMm, 1)} mm",
            ]);
        }

        rows.Add([SheetsWords.Of["neck.angle"], $"{Figures.Mm(head.AngleDeg)}°"]);
        rows.Add([
            SheetsWords.Of["neck.head-slots"],
            $"{Figures.Fixed(blank.HeadSlotMm.ToMm - blank.HeadSlotMm.FromMm, 0)} × {Figures.Fixed(head.SlotWidthMm, 1)} / {Figures.Fixed(head.BetweenSlotsMm, 1)} mm",
        ]);
        if (blank.Slot is { } slot)
        {
            rows.Add([
                SheetsWords.Of["neck.slot-width"],
                $"{Figures.Fixed(slot.WidthFrontMm, 1)} / {Figures.Fixed(slot.WidthBackMm, 1)} mm",
            ]);
            rows.Add([SheetsWords.Of["neck.slot-depth"], $"{Figures.Fixed(slot.DepthMm, 1)} mm"]);
        }

        return new Table(
            SheetsWords.Of["neck.pieces"],
            [new Column(""), new Column("", Align.Right, 58)],
            rows
        )
        {
            WidthMm = 190,
            Style = TextStyle.Body.Larger,
        };
    }

    private static string Size(double a, double b, double c) =>
        $"{Figures.Fixed(a, 0)} × {Figures.Fixed(b, 0)} × {Figures.Fixed(c, 1)} mm";
}

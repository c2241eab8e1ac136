using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Jigs.Brackets;
using Formwright.Sheets.Body;

namespace Formwright.Sheets.Brackets;

/// <summary>The slotted board at full size: edge, slots, the ends of every slot from the centreline and the line across the board.</summary>
internal static class JigBoardSheet
{
    private const double ColumnMm = 264;

    public static NamedSheet Of(JigPlan plan)
    {
        View view = new([.. Items(plan)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["jig.view-board"],
        };
        List<Block> blocks =
        [
            SlotTable(plan),
            new Notes(
                SheetsWords.Of["jig.board-how"],
                [
                    SheetsWords.Of["jig.board-how-1"],
                    SheetsWords.Of.Format("jig.board-how-2", plan.Hardware.HoleMm),
                    SheetsWords.Of.Format(
                        "jig.board-how-3",
                        plan.Design.BoardThicknessMm,
                        plan.Hardware.DiameterMm
                    ),
                    SheetsWords.Of["jig.board-how-4"],
                ],
                ColumnMm
            )
            {
                Numbered = true,
                Style = TextStyle.Body.Larger,
            },
            Members(plan),
            new Cautions(
                [SheetsWords.Of["caution.router"], SheetsWords.Of["caution.dust"]],
                ColumnMm
            )
            {
                Style = TextStyle.Body.Larger,
            },
        ];
        return new NamedSheet(
            "jig-board",
            Layout.Of(
                JigSheets.Title(plan, "sheet.jig-board"),
                [view],
                blocks,
                (2 * ColumnMm) + 11
            ),
            IsTiled: true
        );
    }

    private static Table SlotTable(JigPlan plan) =>
        new(
            SheetsWords.Of["jig.slots"],
            [
                new Column(SheetsWords.Of["column.slot"], Align.Right, 12),
                new Column(SheetsWords.Of["column.inner-x"], Align.Right, 40),
                new Column(SheetsWords.Of["column.inner-y"], Align.Right, 38),
                new Column(SheetsWords.Of["column.outer-x"], Align.Right, 40),
                new Column(SheetsWords.Of["column.outer-y"], Align.Right, 38),
                new Column(SheetsWords.Of["column.travel"], Align.Right, 28),
            ],
            [
                .. plan.Slots.Select(
                    (slot, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{i + 1}",
                                Along(slot.From.X),
                                Figures.Fixed(slot.From.Y, 1),
                                Along(slot.To.X),
                                Figures.Fixed(slot.To.Y, 1),
                                Figures.Fixed(slot.LengthMm, 1),
                            ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    // From the line across the board: towards the tail or towards the heel, in words, since a sign is lost at the bench.
    private static string Along(double x) =>
        $"{Figures.Fixed(Math.Abs(x), 1)} {SheetsWords.Of[x >= 0 ? "jig.to-tail" : "jig.to-heel"]}";

    private static Table Members(JigPlan plan) =>
        new(
            SheetsWords.Of["jig.members"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.brackets"], Align.Right, 40),
                new Column(SheetsWords.Of["column.largest-gap"], Align.Right, 50),
            ],
            [
                .. plan.Members.Select(member =>
                    (IReadOnlyList<string>)
                        [
                            member.Name,
                            $"{2 * member.Settings.Count}",
                            Figures.Fixed(member.LargestGapMm, 0),
                        ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static IEnumerable<Item> Items(JigPlan plan)
    {
        yield return new Line(Shape.Of(plan.Parts[0].Outside), LineStyle.Outline);
        foreach (JigMember member in plan.Members)
        {
            yield return JigItems.Outline(member, LineStyle.Hair);
        }

        foreach (Item item in JigItems.Board(plan, LineStyle.Cut))
        {
            yield return item;
        }

        for (int i = 0; i < plan.Slots.Count; i++)
        {
            SlotLine slot = plan.Slots[i];
            Vector out1 = Vector.At(slot.AngleRad) * (plan.Hardware.HoleMm / 2 + 7);
            yield return new Balloon($"{i + 1}", slot.To + out1, new Vector(0, 0));
            yield return new Balloon($"{i + 1}", JigItems.On(slot.To + out1, -1), new Vector(0, 0));
            yield return new Cross(slot.From, 2);
            yield return new Cross(slot.To, 2);
            yield return new Cross(JigItems.On(slot.From, -1), 2);
            yield return new Cross(JigItems.On(slot.To, -1), 2);
        }

        Box box = Box.Empty;
        foreach (ArcVertex corner in plan.Parts[0].Outside.Vertices)
        {
            box = box.With(corner.Position);
        }

        yield return new LinearDimension(
            new Point(box.Max.X, box.Min.Y),
            new Point(box.Max.X, box.Max.Y),
            Side.Below,
            9
        )
        {
            Share = 0.3,
        };
        yield return new LinearDimension(
            new Point(box.Min.X, box.Max.Y),
            new Point(box.Max.X, box.Max.Y),
            Side.Right,
            9
        );
        yield return new LinearDimension(
            new Point(box.Min.X, box.Min.Y),
            new Point(0, box.Min.Y),
            Side.Left,
            9
        );
        yield return new Label(
            SheetsWords.Of[$"jig.line-{Design.Reading.Choices.NameOf(plan.Design.Align)}"],
            new Point(0, box.Max.Y * 0.8)
        )
        {
            Align = Align.Centre,
            ShiftMm = new(0, 2.5),
            Style = TextStyle.Body.Larger,
        };
        JigMember largest = plan.Members.MaxBy(member => member.Rib.TailXMm)!;
        yield return new BassTreble(
            ViewFrame.Workboard,
            largest.Rib.HeelXMm + (0.7 * largest.Rib.Guitar.Outline.BodyLengthMm),
            largest.Rib.Half.Box.Max.Y * 0.4
        )
        {
            Style = TextStyle.Body.Larger,
        };
    }
}

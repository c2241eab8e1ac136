using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Jigs.Brackets;
using Formwright.Sheets.Body;

namespace Formwright.Sheets.Brackets;

/// <summary>
/// The board at full size with every bracket where it stands for one instrument. Laid on the board by its centreline and the line across it, the
/// faces are pushed to the heavy lines; the table says the same in figures.
/// </summary>
internal static class SettingSheet
{
    private const double ColumnMm = 264;

    public static NamedSheet Of(JigPlan plan, JigMember member, string id)
    {
        View view = new([.. Items(plan, member)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["jig.view-setting"],
        };
        return new NamedSheet(
            id,
            Layout.Of(
                Titles.Of(member.Rib.Guitar, "sheet.jig-setting", "document.check"),
                [view],
                [
                    Table(member, ColumnMm),
                    How(plan),
                    Figures(plan, member),
                    new Cautions([SheetsWords.Of["caution.elastic"]], ColumnMm)
                    {
                        Style = TextStyle.Body.Larger,
                    },
                ],
                (2 * ColumnMm) + 11
            ),
            IsTiled: true
        );
    }

    /// <summary>The setting table of one instrument.</summary>
    public static Table Table(JigMember member, double widthMm) =>
        new(
            SheetsWords.Of["jig.settings"],
            [
                new Column(SheetsWords.Of["column.slot"], Align.Right, 12),
                new Column(SheetsWords.Of["column.along-slot"], Align.Right, 30) { Strong = true },
                new Column(SheetsWords.Of["column.turn"], Align.Right, 34) { Strong = true },
                new Column(SheetsWords.Of["column.bolt"], Align.Right, 28) { Strong = true },
                new Column(SheetsWords.Of["column.face"], Align.Centre),
                new Column(SheetsWords.Of["column.touches"], Align.Right, 38),
                new Column(SheetsWords.Of["column.behind-face"], Align.Right, 34),
            ],
            [
                .. member.Settings.Select(setting =>
                    (IReadOnlyList<string>)
                        [
                            $"{setting.Slot}",
                            Drawing.Figures.Fixed(setting.AlongSlotMm, 1),
                            Turn(setting.TurnRad),
                            Drawing.Figures.Fixed(setting.BoltMm, 1),
                            SheetsWords.Of[
                                setting.Contact.Face == BracketFace.Front ? "jig.front" : "jig.rear"
                            ],
                            $"{Drawing.Figures.Fixed(setting.HeightFromMm, 0)}–{Drawing.Figures.Fixed(setting.HeightToMm, 0)}",
                            setting.Contact.Kind == ContactKind.Tangent
                                ? "–"
                                : Drawing.Figures.Fixed(setting.Contact.GapMm, 2),
                        ]
                ),
            ]
        )
        {
            WidthMm = widthMm,
            Style = TextStyle.Body.Larger,
        };

    private static string Turn(double rad)
    {
        double degrees = Math.Abs(rad) * 180 / Math.PI;
        string figure = $"{Drawing.Figures.Fixed(degrees, 1)}°";
        return degrees < 0.05
            ? figure
            : $"{figure} {SheetsWords.Of[rad > 0 ? "jig.to-tail" : "jig.to-heel"]}";
    }

    private static Table Figures(JigPlan plan, JigMember member) =>
        new(
            "",
            [new Column(""), new Column(SheetsWords.Of["column.mm"], Align.Right, 30)],
            [
                [SheetsWords.Of["jig.largest-gap"], Drawing.Figures.Fixed(member.LargestGapMm, 0)],
                [
                    SheetsWords.Of["jig.allowed-gap"],
                    Drawing.Figures.Fixed(plan.Design.LargestGapMm, 0),
                ],
                .. double.IsFinite(member.BetweenBracketsMm)
                    ? (IReadOnlyList<string>[])
                        [
                            [
                                SheetsWords.Of["jig.between-brackets"],
                                Drawing.Figures.Fixed(member.BetweenBracketsMm, 1),
                            ],
                        ]
                    : [],
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static Notes How(JigPlan plan) =>
        new(
            SheetsWords.Of["jig.how"],
            [
                SheetsWords.Of[$"jig.how-lay-{Design.Reading.Choices.NameOf(plan.Design.Align)}"],
                SheetsWords.Of["jig.how-set"],
                SheetsWords.Of["jig.how-turn"],
                SheetsWords.Of["jig.how-gate"],
            ],
            ColumnMm
        )
        {
            Numbered = true,
            Style = TextStyle.Body.Larger,
        };

    private static IEnumerable<Item> Items(JigPlan plan, JigMember member)
    {
        foreach (int side in new[] { 1, -1 })
        {
            foreach (BracketSetting setting in member.Settings)
            {
                foreach (
                    Item item in JigItems.Bracket(setting, plan.Design.Bracket.BoltDiameterMm, side)
                )
                {
                    yield return item;
                }
            }
        }

        foreach (Item item in JigItems.Board(plan, LineStyle.Hidden))
        {
            yield return item;
        }

        yield return JigItems.Outline(member, LineStyle.Detail);
        foreach (BracketSetting setting in member.Settings)
        {
            foreach (int side in new[] { 1, -1 })
            {
                Vector outward = setting.Contact.Outward;
                Point end = setting.Contact.Middle + (outward * (plan.Design.Bracket.BaseMm + 8));

                // On the sheet right is y and up is -x: a number stands beyond the bracket, along its axis.
                yield return new Balloon(
                    $"{setting.Slot}",
                    JigItems.On(end, side),
                    new Vector(0, 0)
                );
            }
        }

        double inside = member.Rib.Half.Box.Max.Y * 0.45;
        yield return new BassTreble(
            ViewFrame.Workboard,
            member.Rib.HeelXMm + member.Rib.Guitar.Design.Outline.LowerBout.AtMm,
            inside
        )
        {
            Style = TextStyle.Body.Larger,
        };
        yield return new Label(
            SheetsWords.Of[$"jig.line-{Design.Reading.Choices.NameOf(plan.Design.Align)}"],
            new Point(0, member.Rib.Half.Box.Max.Y * 0.5)
        )
        {
            Align = Align.Centre,
            ShiftMm = new(0, 2.5),
            Style = TextStyle.Body.Larger,
        };
        yield return new Label(
            member.Name,
            new Point(member.Rib.HeelXMm + (0.62 * member.Rib.Guitar.Outline.BodyLengthMm), 0)
        )
        {
            Align = Align.Centre,
            Style = TextStyle.Body.Larger,
            Clear = true,
        };
    }
}

using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.NeckBlanks;

namespace Formwright.Sheets.Body;

/// <summary>The neck blank at full size, from the side and from the front, the section of its heel with slots and wedge, and the pieces to saw.</summary>
internal static class NeckSheet
{
    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        NeckBlank blank = body.Neck;
        View side = new([.. Side(guitar, blank)], ViewFrame.SideView)
        {
            Label = SheetsWords.Of["neck.side-view"],
        };
        View plan = new([.. Plan(guitar, blank)], ViewFrame.Front)
        {
            Label = SheetsWords.Of["neck.plan-view"],
        };
        View heel = new([.. Heel(guitar, blank)], ViewFrame.Section)
        {
            Label = SheetsWords.Of[blank.Slot is null ? "neck.dowel-view" : "neck.slot-view"],
        };
        List<Block> blocks = [new ViewBlock(heel)];
        if (blank.Slot is { } slot)
        {
            blocks.Add(new ViewBlock(Wedge(guitar, slot)));
        }

        blocks.Add(NeckPieces.Of(guitar, blank));
        blocks.Add(
            new Notes(
                "",
                [
                    SheetsWords.Of[
                        guitar.Design.Head.Joint == HeadJoint.Scarf
                            ? "neck.note-scarf"
                            : "neck.note-one-piece"
                    ],
                    SheetsWords.Of[blank.Slot is null ? "neck.note-dowels" : "neck.note-slots"],
                ],
                190
            )
            {
                Style = TextStyle.Body.Larger,
            }
        );
        blocks.Add(Care.AtTheMachine(190, TextStyle.Body.Larger));
        Sheet sheet = Layout.Beside(Titles.Of(guitar, "sheet.neck"), [side, plan], blocks, 190);
        return new NamedSheet("neck", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Side(Guitar guitar, NeckBlank blank)
    {
        yield return new Region(Shape.Polyline(blank.Side, closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        double join = guitar.JoinMm;
        double foot = blank.ShaftMm;
        double cap = blank.HeelHeightMm;
        // Joints of the stack, from the neck's back down.
        double top = -blank.BoardThicknessMm;
        double layer = guitar.Design.Heel.LayerMm;
        for (int i = 0; i < blank.StackPieces; i++)
        {
            double z = top - (i * layer);
            yield return new Line(
                new Point(join - guitar.Design.Heel.LengthMm, z),
                new Point(foot, z),
                LineStyle.Hidden
            );
        }

        if (blank.Slot is { } slot)
        {
            double s = guitar.Design.Soundboard.EdgeThicknessMm;
            yield return new Line(
                Shape.Polyline(
                    [
                        new Point(join + slot.WidthFrontMm, -s),
                        new Point(join, -s),
                        new Point(join, -s - slot.HeightMm),
                        new Point(join + slot.WidthBackMm, -s - slot.HeightMm),
                    ],
                    closed: true
                ),
                LineStyle.Detail
            );
        }

        foreach (double z in blank.DowelHeightsMm)
        {
            yield return new Line(
                new Point(join - (guitar.Design.Heel.DowelLengthMm / 2), -z),
                new Point(join + (guitar.Design.Heel.DowelLengthMm / 2), -z),
                LineStyle.Centreline
            );
        }

        double angle = guitar.Design.Head.AngleDeg * Math.PI / 180;
        foreach (double post in blank.PostsMm)
        {
            Point on =
                new Point(0, guitar.Design.Neck.RampMm)
                + (new Vector(-Math.Cos(angle), -Math.Sin(angle)) * post)
                + (
                    new Vector(Math.Sin(angle), -Math.Cos(angle))
                    * guitar.Design.Head.PostBelowFaceMm
                );
            yield return new Hole(on, guitar.Design.Head.PostHoleMm);
            if (post == blank.PostsMm.Max())
            {
                yield return new DiameterDimension(
                    on,
                    guitar.Design.Head.PostHoleMm,
                    new Vector(6, -26)
                )
                {
                    Count = 2 * blank.PostsMm.Count,
                    Style = TextStyle.Body.Larger,
                };
            }
        }

        yield return new Line(
            new Point(-guitar.Design.Head.LengthMm, 0),
            new Point(foot + 12, 0),
            LineStyle.Datum
        );
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                new Station(new Point(0, guitar.Design.Neck.RampMm), SheetsWords.Of["station.nut"]),
                new Station(new Point(join, 0), SheetsWords.Of["station.join"]),
                new Station(new Point(foot, 0), SheetsWords.Of["neck.end"]),
            ],
            Drawing.Side.Above,
            10
        ).Larger;
        yield return new LinearDimension(
            new Point(foot, 0),
            new Point(foot, -cap),
            Drawing.Side.Right,
            10
        );
        yield return new LinearDimension(
            new Point(-guitar.Design.Head.LengthMm * Math.Cos(angle), 0),
            blank.Side[^(guitar.Design.Head.VeneerMm > 0 ? 2 : 1)],
            Drawing.Side.Left,
            8
        );
    }

    private static IEnumerable<Item> Plan(Guitar guitar, NeckBlank blank)
    {
        Point[] half = [.. blank.Plan];
        Point[] other = [.. half.Reverse().Select(at => new Point(at.X, -at.Y))];
        yield return new Region(Shape.Polyline([.. half, .. other[1..^1]], closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        double w = blank.BoardWidthMm / 2;
        yield return new Line(
            Shape.Rectangle(Box.Of(-guitar.Design.Head.LengthMm, -w, blank.ShaftMm, w)),
            LineStyle.Hidden
        );
        HeadDesign head = guitar.Design.Head;
        foreach (int side in new[] { -1, 1 })
        {
            double inner = side * head.BetweenSlotsMm / 2;
            double outer = side * ((head.BetweenSlotsMm / 2) + head.SlotWidthMm);
            yield return new Line(
                Shape.Rectangle(
                    Box.Of(
                        -blank.HeadSlotMm.ToMm,
                        Math.Min(inner, outer),
                        -blank.HeadSlotMm.FromMm,
                        Math.Max(inner, outer)
                    )
                ),
                LineStyle.Detail
            );
            foreach (double post in blank.PostsMm)
            {
                yield return new Line(
                    new Point(-post, side * head.BetweenSlotsMm * 0.3),
                    new Point(-post, side * ((head.WidthTipMm / 2) + 3)),
                    LineStyle.Centreline
                );
            }
        }

        yield return new Line(
            new Point(-head.LengthMm - 10, 0),
            new Point(blank.ShaftMm + 10, 0),
            LineStyle.Centreline
        );
        NeckDesign neck = guitar.Design.Neck;
        foreach (double x in new[] { 14, guitar.JoinMm - 18 })
        {
            double wide = Instrument.Necks.NeckProfile.Of(neck, guitar.JoinMm).At(x).WidthMm / 2;
            bool isNut = x < guitar.JoinMm / 2;
            yield return new LinearDimension(
                new Point(x, -wide),
                new Point(x, wide),
                Drawing.Side.Right,
                0
            )
            {
                Share = 0.7,
                Text = Figures.Mm(isNut ? neck.WidthNutMm : neck.WidthJoinMm),
            };
        }

        yield return new LinearDimension(
            new Point(-head.LengthMm, -head.WidthTipMm / 2),
            new Point(-head.LengthMm, head.WidthTipMm / 2),
            Drawing.Side.Left,
            8
        );
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                .. blank.PostsMm.Select(post => new Station(
                    new Point(-post, -head.WidthTipMm / 2)
                )),
                new Station(new Point(-head.LengthMm, -head.WidthTipMm / 2)),
                new Station(new Point(0, -neck.WidthNutMm / 2), SheetsWords.Of["station.nut"]),
                new Station(
                    new Point(guitar.JoinMm, -neck.WidthJoinMm / 2),
                    SheetsWords.Of["station.join"]
                ),
            ],
            Drawing.Side.Below,
            10
        ).Larger;
    }

    // Across at the join, soundboard up: y to the right.
    private static IEnumerable<Item> Heel(Guitar guitar, NeckBlank blank)
    {
        HeelDesign heel = guitar.Design.Heel;
        double front = heel.WidthMm / 2;
        double cap = heel.CapWidthMm / 2;
        double height = blank.HeelHeightMm;
        double step = blank.SoundboardStepMm;
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(-front, -step),
                    new Point(front, -step),
                    new Point(front, -height),
                    new Point(-front, -height),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Wood,
            HatchDegrees = 45,
            Edge = LineStyle.Cut,
        };
        // The carved heel outside the box tapers to its cap.
        yield return new Line(new Point(-front, -step), new Point(-cap, -height), LineStyle.Hidden);
        yield return new Line(new Point(front, -step), new Point(cap, -height), LineStyle.Hidden);
        yield return new Line(new Point(0, 6), new Point(0, -height - 6), LineStyle.Centreline);
        if (blank.Slot is { } slot)
        {
            foreach (int side in new[] { -1, 1 })
            {
                double bottom = side * slot.BetweenMm / 2;
                double outer = side * front;
                yield return new Region(
                    Shape.Rectangle(
                        Box.Of(Math.Min(bottom, outer), -height, Math.Max(bottom, outer), -step)
                    )
                )
                {
                    Fill = Tone.Paper,
                    Edge = LineStyle.Cut,
                };
            }

            yield return new LinearDimension(
                new Point(-slot.BetweenMm / 2, -height),
                new Point(slot.BetweenMm / 2, -height),
                Drawing.Side.Below,
                8
            );
            yield return new LinearDimension(
                new Point(slot.BetweenMm / 2, -step),
                new Point(front, -step),
                Drawing.Side.Above,
                8
            );
        }

        foreach (double z in blank.DowelHeightsMm)
        {
            yield return new Hole(new Point(0, -z), heel.DowelMm);
        }

        if (blank.DowelHeightsMm.Count > 0)
        {
            yield return new OrdinateDimensions(
                new Point(0, 0),
                [.. blank.DowelHeightsMm.Select(z => new Station(new Point(-front, -z)))],
                Drawing.Side.Left,
                8
            );
        }

        yield return new LinearDimension(
            new Point(-front, -height),
            new Point(front, -height),
            Drawing.Side.Below,
            17
        );
        yield return new LinearDimension(
            new Point(front, -step),
            new Point(front, -height),
            Drawing.Side.Right,
            8
        );
    }

    private static View Wedge(Guitar guitar, HeelSlot slot)
    {
        HeelDesign heel = guitar.Design.Heel;
        Point[] wedge =
        [
            new(0, 0),
            new(heel.WedgeThinMm, 0),
            new(heel.WedgeThickMm, -slot.HeightMm),
            new(0, -slot.HeightMm),
        ];
        return new View([
            new Region(Shape.Polyline(wedge, closed: true))
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Outline,
            },
            new LinearDimension(wedge[0], wedge[1], Drawing.Side.Above, 6),
            new LinearDimension(wedge[3], wedge[2], Drawing.Side.Below, 6),
            new LinearDimension(wedge[1], wedge[2], Drawing.Side.Right, 8),
        ])
        {
            Label = SheetsWords.Of["neck.wedge"],
        };
    }
}

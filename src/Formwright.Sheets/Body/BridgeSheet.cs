using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Bridges;

namespace Formwright.Sheets.Body;

/// <summary>Bridge, its caul and the nut, at full size and larger.</summary>
internal static class BridgeSheet
{
    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View plan = new([.. Plan(guitar, body.Bridge)])
        {
            Label = SheetsWords.Of["bridge.plan-view"],
        };
        View front = new([.. Front(guitar, body.Bridge)])
        {
            Label = SheetsWords.Of["bridge.front-view"],
        };
        View caul = new([.. Caul(body)]) { Label = SheetsWords.Of["bridge.caul-view"] };
        View section = new([.. Section(guitar, body.Bridge)], ViewFrame.Section)
        {
            Scale = 2,
            Label = SheetsWords.Of["bridge.section"],
        };
        View nut = new([.. NutItems.Of(body.Nut)])
        {
            Scale = 2,
            Label = SheetsWords.Of["bridge.nut-view"],
        };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.bridge"),
            [plan, front, caul],
            [
                new ViewBlock(section),
                new ViewBlock(nut),
                Strings(body),
                What(body.Bridge),
                new StackBlock([
                    new Notes(
                        "",
                        [SheetsWords.Of["bridge.note"], SheetsWords.Of["bridge.note-caul"]],
                        128
                    ),
                    Care.WithDust(128),
                ]),
            ],
            250
        );
        return new NamedSheet("bridge", sheet, IsTiled: true);
    }

    // From above, front edge up: x right is y (treble), y down is towards the tail.
    private static IEnumerable<Item> Plan(Guitar guitar, BridgePlan bridge)
    {
        double half = bridge.LengthMm / 2;
        double middle = guitar.Design.Bridge.MiddleMm / 2;
        yield return new Region(Shape.Rectangle(Box.Of(-half, -bridge.WidthMm, half, 0)))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        foreach (double x in new[] { -middle, middle })
        {
            yield return new Line(new Point(x, 0), new Point(x, -bridge.WidthMm), LineStyle.Detail);
        }

        double slope = Math.Tan(bridge.SlotSlopeDeg * Math.PI / 180);
        double s = bridge.SlotLengthMm / 2;
        double w = bridge.SlotWidthMm / 2;
        double c = -bridge.SlotMiddleMm;
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(-s, c - (s * slope) + w),
                    new Point(s, c + (s * slope) + w),
                    new Point(s, c + (s * slope) - w),
                    new Point(-s, c - (s * slope) - w),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Paper,
            Edge = LineStyle.Detail,
        };
        foreach (BridgeString each in bridge.Strings)
        {
            yield return new Line(
                new Point(each.YMm, 3),
                new Point(each.YMm, -bridge.TieHoleFromFrontMm),
                LineStyle.Hair
            );
            yield return new Cross(new Point(each.YMm, -bridge.TieHoleFromFrontMm), 1.5);
        }

        yield return new Line(
            new Point(0, 8),
            new Point(0, -bridge.WidthMm - 8),
            LineStyle.Centreline
        );
        yield return new LinearDimension(new Point(-half, 0), new Point(half, 0), Side.Above, 16);
        yield return new LinearDimension(
            new Point(bridge.Strings.Min(b => b.YMm), 3),
            new Point(bridge.Strings.Max(b => b.YMm), 3),
            Side.Above,
            6
        );
        yield return new LinearDimension(
            new Point(half, 0),
            new Point(half, -bridge.WidthMm),
            Side.Right,
            8
        );
        yield return new LinearDimension(
            new Point(-half, 0),
            new Point(-s, c - (s * slope)),
            Side.Left,
            8
        );
        yield return new LinearDimension(
            new Point(-middle, -bridge.WidthMm),
            new Point(middle, -bridge.WidthMm),
            Side.Below,
            8
        );
        foreach (Item word in NutItems.Sides(half - 6, -bridge.WidthMm / 2))
        {
            yield return word;
        }
    }

    // From the tail: the underside follows the dome, so it is hollow.
    private static IEnumerable<Item> Front(Guitar guitar, BridgePlan bridge)
    {
        BridgeDesign design = guitar.Design.Bridge;
        double half = bridge.LengthMm / 2;
        double middle = design.MiddleMm / 2;
        double Under(double y) => bridge.Across.RiseAt(y + half);
        Point[] under =
        [
            .. bridge.Across.Points.Select(p => new Point(p.AlongMm - half, p.RiseMm)),
        ];
        List<Point> edge =
        [
            .. under,
            new(half, Under(half) + design.WingTipMm),
            new(middle, Under(middle) + design.WingMm),
            new(middle, Under(0) + bridge.SlotDepthMm + bridge.WoodBelowSlotMm),
            new(-middle, Under(0) + bridge.SlotDepthMm + bridge.WoodBelowSlotMm),
            new(-middle, Under(-middle) + design.WingMm),
            new(-half, Under(-half) + design.WingTipMm),
        ];
        yield return new Region(Shape.Polyline(edge, closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        yield return new Line(new Point(-half - 8, 0), new Point(half + 8, 0), LineStyle.Datum);
        foreach (BridgeString each in bridge.Strings)
        {
            yield return new Line(
                Shape.Circle(
                    new Point(each.YMm, Under(each.YMm) + bridge.TieHeightMm),
                    design.TieHoleMm / 2
                ),
                LineStyle.Detail
            );
        }

        yield return new LinearDimension(
            new Point(half, Under(half)),
            new Point(half, Under(half) + design.WingTipMm),
            Side.Right,
            14
        );
        foreach (Item word in NutItems.Sides(half, design.WingMm + 2))
        {
            yield return word;
        }

        yield return new Leader(
            new Point(0, Under(0)),
            new Vector(16, -9),
            SheetsWords.Of.Format("bridge.hollow", bridge.Across.MostMm)
        );
    }

    private static IEnumerable<Item> Section(Guitar guitar, BridgePlan bridge)
    {
        double top = bridge.SlotDepthMm + bridge.WoodBelowSlotMm;
        double c = bridge.SlotMiddleMm;
        double w = bridge.SlotWidthMm / 2;
        double back = bridge.WidthMm;
        // Behind the saddle the block steps down to where the strings are tied.
        double tie = Math.Min(top, bridge.TieHeightMm + (guitar.Design.Bridge.TieHoleMm / 2) + 2.5);
        double step = Math.Min(c + w + 3, back - 4);
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(0, 0),
                    new Point(back, 0),
                    new Point(back, tie),
                    new Point(
                        bridge.TieHoleFromFrontMm - 4 > step + 1
                            ? bridge.TieHoleFromFrontMm - 4
                            : step,
                        tie
                    ),
                    new Point(step, top),
                    new Point(c + w, top),
                    new Point(c + w, bridge.WoodBelowSlotMm),
                    new Point(c - w, bridge.WoodBelowSlotMm),
                    new Point(c - w, top),
                    new Point(0, top * 0.72),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Wood,
            HatchDegrees = 45,
            Edge = LineStyle.Cut,
        };
        yield return new Line(
            new Point(bridge.TieHoleFromFrontMm - 5, bridge.TieHeightMm),
            new Point(back + 4, bridge.TieHeightMm),
            LineStyle.Centreline
        );
        yield return new LinearDimension(new Point(0, 0), new Point(c, 0), Side.Below, 7);
        yield return new LinearDimension(new Point(0, 0), new Point(back, 0), Side.Below, 15);
        yield return new LinearDimension(new Point(0, 0), new Point(c, top), Side.Left, 8);
        yield return new LinearDimension(
            new Point(back, 0),
            new Point(back, bridge.TieHeightMm),
            Side.Right,
            10
        );
        yield return new LinearDimension(
            new Point(c - w, top),
            new Point(c + w, top),
            Side.Above,
            6
        );
    }

    private static IEnumerable<Item> Caul(BodyPlan body)
    {
        BridgePlan bridge = body.Bridge;
        double half = bridge.LengthMm / 2;
        yield return new Region(Shape.Rectangle(Box.Of(-half, -bridge.WidthMm, half, 0)))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        double front = bridge.Middle.X - (bridge.WidthMm / 2);
        // Its face looks out of the box: seen on it, bass is left as from the front.
        Point On(Point place) => new(place.Y, -(place.X - front));
        Point min = new(front, -half);
        Point max = new(front + bridge.WidthMm, half);
        CaulNotch[] notches = [.. body.BridgeCaul.Notches.OrderBy(notch => Entry(notch).Y)];
        for (int i = 0; i < notches.Length; i++)
        {
            CaulNotch notch = notches[i];
            Vector side =
                (notch.To - notch.From).Left
                * (notch.WidthMm / 2 / notch.From.DistanceTo(notch.To));
            Point[] corners =
            [
                notch.From + side,
                notch.To + side,
                notch.To - side,
                notch.From - side,
            ];
            yield return new Region(
                Shape.Polyline([.. corners.Select(at => On(Held(at)))], closed: true)
            )
            {
                Fill = Tone.Paper,
                Edge = LineStyle.Pocket,
            };
            // Names stand in two rows, so that braces that cross at the edge keep theirs apart.
            yield return new Label(notch.Brace, On(Held(Entry(notch))))
            {
                Align = Align.Centre,
                ShiftMm = new(0, i % 2 == 0 ? 2 : 6),
            };
        }

        yield return new Line(
            new Point(0, 0),
            new Point(0, -bridge.WidthMm - 6),
            LineStyle.Centreline
        );

        static Point Entry(CaulNotch notch) => notch.From.X <= notch.To.X ? notch.From : notch.To;

        Point Held(Point at) => new(Math.Clamp(at.X, min.X, max.X), Math.Clamp(at.Y, min.Y, max.Y));
    }

    private static Table Strings(BodyPlan body) =>
        new(
            SheetsWords.Of["bridge.strings"],
            [
                new Column(SheetsWords.Of["column.string"], Align.Right, 14),
                new Column(SheetsWords.Of["column.from-centreline"], Align.Right, 30),
                new Column(SheetsWords.Of["column.saddle-from-nut"], Align.Right, 26),
                new Column(SheetsWords.Of["column.nut-end"], Align.Right, 26),
                new Column(SheetsWords.Of["column.slot-wide"], Align.Right, 20),
                new Column(SheetsWords.Of["column.slot-bottom"], Align.Right, 24),
            ],
            [
                .. body.Bridge.Strings.Zip(
                    body.Nut.Slots,
                    (saddle, slot) =>
                        (IReadOnlyList<string>)
                            [
                                $"{saddle.Number}",
                                $"{Figures.Fixed(Math.Abs(saddle.YMm), 1)} {SheetsWords.Of[saddle.YMm < 0 ? "side.bass-short" : "side.treble-short"]}",
                                Figures.Fixed(saddle.SaddleXMm, 1),
                                Figures.Fixed(slot.FromBassEdgeMm, 2),
                                Figures.Fixed(slot.WidthMm, 2),
                                Figures.Fixed(slot.BottomMm, 2),
                            ]
                ),
            ]
        );

    private static Table What(BridgePlan bridge) =>
        new(
            SheetsWords.Of["bridge.figures"],
            [new Column(""), new Column("", Align.Right, 24)],
            [
                [SheetsWords.Of["bridge.front-edge"], $"{Figures.Fixed(bridge.FrontXMm, 1)} mm"],
                [SheetsWords.Of["bridge.slot-depth"], $"{Figures.Fixed(bridge.SlotDepthMm, 1)} mm"],
                [SheetsWords.Of["bridge.blank"], $"{Figures.Fixed(bridge.BlankMm, 1)} mm"],
                [
                    SheetsWords.Of["bridge.hollow-across"],
                    $"{Figures.Fixed(bridge.Across.MostMm, 2)} mm",
                ],
                [
                    SheetsWords.Of["bridge.hollow-along"],
                    $"{Figures.Fixed(bridge.Along.MostMm, 2)} mm",
                ],
                [SheetsWords.Of["bridge.mass"], $"{Figures.Fixed(bridge.MassG, 1)} g"],
            ]
        )
        {
            WidthMm = 110,
        };
}

using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Bridges;

namespace Formwright.Sheets.Body;

/// <summary>The soundboard from inside at full size, as it lies on the workboard: bars, braces, linings, where the bridge will stand.</summary>
internal static class SoundboardSheet
{
    private const double ToleranceMm = 0.01;
    private const double ColumnMm = 256;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View view = new([.. Items(guitar, body)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["soundboard.view"],
        };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, "sheet.soundboard"),
            view,
            Braces(body),
            Board(guitar, body),
            new Notes(
                "",
                [SheetsWords.Of["soundboard.note"], SheetsWords.Of["soundboard.note-bars"]],
                ColumnMm
            )
            {
                Style = TextStyle.Body.Larger,
            }
        );
        return new NamedSheet("soundboard", sheet, IsTiled: true);
    }

    // Body frame, seen from inside: y_b = -y.
    private static Point Inside(Point place) => new(place.X, -place.Y);

    private static IEnumerable<Item> Items(Guitar guitar, BodyPlan body)
    {
        foreach (Item item in Board(guitar))
        {
            yield return item;
        }

        foreach (Brace brace in body.Soundboard.Braces)
        {
            foreach (Item item in BraceItems(brace, body.Soundboard.Braces))
            {
                yield return item;
            }
        }

        foreach (Item item in Bridge(guitar.Design.Bridge, body.Bridge))
        {
            yield return item;
        }

        BoutDesign upper = guitar.Design.Outline.UpperBout;
        yield return new BassTreble(ViewFrame.Workboard, upper.AtMm - 34, (upper.WidthMm / 2) - 52)
        {
            Style = TextStyle.Body.Larger,
        };
        yield return Stations(guitar, body);
    }

    private static IEnumerable<Item> Board(Guitar guitar)
    {
        Chain closed = guitar.Outline.Closed;
        double length = guitar.Outline.BodyLengthMm;
        yield return new Line(Shape.Of(closed.ToBeziers(ToleranceMm)), LineStyle.Outline);
        RibsDesign ribs = guitar.Design.Ribs;
        double[] depths =
            ribs.LiningWidthMm > 0
                ? [ribs.ThicknessMm, ribs.ThicknessMm + ribs.LiningWidthMm]
                : [ribs.ThicknessMm];
        foreach (double depth in depths)
        {
            foreach (OffsetPath path in Offset.Of(closed, depth).Paths)
            {
                yield return new Line(
                    Shape.Of(path.ToBeziers(ToleranceMm)),
                    depth > ribs.ThicknessMm ? LineStyle.Hidden : LineStyle.Detail
                );
            }
        }

        SoundholeDesign hole = guitar.Design.Soundhole;
        Point centre = new(hole.AtMm, 0);
        yield return new Line(Shape.Circle(centre, hole.RadiusMm), LineStyle.Outline);
        foreach (RosetteRingDesign ring in guitar.Design.Rosette.Rings)
        {
            yield return new Line(Shape.Circle(centre, ring.OuterMm), LineStyle.Hidden);
        }

        yield return new Line(new Point(-14, 0), new Point(length + 14, 0), LineStyle.Centreline);
    }

    private static IEnumerable<Item> BraceItems(Brace brace, IReadOnlyList<Brace> all)
    {
        double half = brace.Shape.WidthMm / 2;
        for (int i = 1; i < brace.Line.Count; i++)
        {
            Point a = Inside(brace.Line[i - 1]);
            Point b = Inside(brace.Line[i]);
            Vector side = (b - a).Left * (half / a.DistanceTo(b));
            yield return new Region(
                Shape.Polyline([a - side, b - side, b + side, a + side], closed: true)
            )
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Detail,
            };
        }

        (Point at, Vector along) = BraceNames.Of(brace, all);
        // On the sheet, neck up, x runs down and y_b to the right; a name reads upwards or to the right.
        Vector onSheet = new(-along.Y, -along.X);
        double degrees = Math.Atan2(onSheet.Y, onSheet.X) * 180 / Math.PI;
        yield return new Label(brace.Name, Inside(at))
        {
            Align = Align.Centre,
            Rise = Rise.Middle,
            Degrees =
                degrees > 90 ? degrees - 180
                : degrees <= -90 + 1e-6 ? degrees + 180
                : degrees,
            Clear = true,
            Style = TextStyle.Strong,
        };
    }

    private static IEnumerable<Item> Bridge(BridgeDesign design, BridgePlan bridge)
    {
        Vector half = new(bridge.WidthMm / 2, bridge.LengthMm / 2);
        yield return new Line(
            Shape.Rectangle(new Box(bridge.Middle - half, bridge.Middle + half)),
            LineStyle.Hidden
        );

        if (design.PatchThicknessMm > 0)
        {
            Vector patch = half + new Vector(design.PatchMarginMm, design.PatchMarginMm);
            yield return new Line(
                Shape.Rectangle(new Box(bridge.Middle - patch, bridge.Middle + patch)),
                LineStyle.Detail
            );
        }
    }

    private static OrdinateDimensions Stations(Guitar guitar, BodyPlan body)
    {
        double outside = -guitar.Outline.WidthAt(guitar.Design.Outline.LowerBout.AtMm) / 2;
        Brace[] fans = [.. body.Soundboard.Braces.Where(brace => brace.Kind == BraceKind.Fan)];
        List<Station> stations =
        [
            new(new Point(0, outside * 0.25), SheetsWords.Of["station.heel"]),
            .. body
                .Soundboard.Braces.Where(brace => brace.Kind == BraceKind.HarmonicBar)
                .Select(brace => new Station(
                    new Point(brace.Line[0].X, -Math.Abs(brace.Line[0].Y)),
                    brace.Name
                )),
            new(
                new Point(guitar.Design.Soundhole.AtMm, -guitar.Design.Soundhole.RadiusMm),
                SheetsWords.Of["station.soundhole"]
            ),
            new(
                new Point(body.Bridge.Middle.X, -body.Bridge.LengthMm / 2),
                SheetsWords.Of["soundboard.bridge"]
            ),
            new(
                new Point(guitar.Design.Outline.LowerBout.AtMm, outside),
                SheetsWords.Of["station.lower-bout"]
            ),
            new(
                new Point(guitar.Outline.BodyLengthMm, outside * 0.25),
                SheetsWords.Of["station.tail"]
            ),
        ];
        if (fans.Length > 0)
        {
            double start = fans.Min(brace => brace.Line.Min(at => at.X));
            Point at = fans.SelectMany(brace => brace.Line).First(p => p.X <= start + 1e-6);
            stations.Add(new(new Point(start, -Math.Abs(at.Y)), SheetsWords.Of["soundboard.fan"]));
        }

        return new OrdinateDimensions(new Point(0, 0), stations, Side.Left, 12).Larger;
    }

    private static Table Braces(BodyPlan body) =>
        new(
            SheetsWords.Of["soundboard.braces"],
            [
                new Column(SheetsWords.Of["column.brace"]),
                new Column(SheetsWords.Of["column.one-end"], Align.Right, 46),
                new Column(SheetsWords.Of["column.other-end"], Align.Right, 46),
                new Column(SheetsWords.Of["column.length"], Align.Right, 24),
                new Column(SheetsWords.Of["column.size"], Align.Right, 34),
                new Column(SheetsWords.Of["column.rise"], Align.Right, 20),
                new Column(SheetsWords.Of["column.mass"], Align.Right, 16),
            ],
            [
                .. body.Soundboard.Braces.Select(brace =>
                    (IReadOnlyList<string>)
                        [
                            brace.Name,
                            Where(brace.Line[0]),
                            Where(brace.Line[^1]),
                            Figures.Fixed(brace.LengthMm, 1),
                            $"{Figures.Mm(brace.Shape.WidthMm)} × {Figures.Mm(brace.Shape.HeightMm)}",
                            Figures.Fixed(brace.Gauge.MostMm, 2),
                            Figures.Fixed(brace.MassG, 1),
                        ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    // Station, then distance from the centreline with its side.
    private static string Where(Point place)
    {
        string side =
            Math.Abs(place.Y) < 0.05 ? ""
            : place.Y > 0 ? SheetsWords.Of["side.treble-short"]
            : SheetsWords.Of["side.bass-short"];
        return $"{Figures.Fixed(place.X, 1)} / {Figures.Fixed(Math.Abs(place.Y), 1)} {side}".TrimEnd();
    }

    private static Table Board(Guitar guitar, BodyPlan body)
    {
        SoundboardDesign board = guitar.Design.Soundboard;
        double half = guitar.Outline.Turns.Max(row => row.WidthMm) / 2;
        return new Table(
            SheetsWords.Of["soundboard.board"],
            [new Column(""), new Column("", Align.Right, 40)],
            [
                [
                    SheetsWords.Of["soundboard.halves"],
                    $"{Figures.Fixed(guitar.Outline.BodyLengthMm + (2 * board.OverhangMm), 0)} × {Figures.Fixed(half + board.OverhangMm, 0)} mm",
                ],
                [
                    SheetsWords.Of["soundboard.thickness"],
                    $"{Figures.Fixed(board.ThicknessMm, 2)} / {Figures.Fixed(board.EdgeThicknessMm, 2)} mm",
                ],
                [SheetsWords.Of["soundboard.mass"], $"{Figures.Fixed(body.Soundboard.MassG, 0)} g"],
                [
                    SheetsWords.Of["soundboard.brace-mass"],
                    $"{Figures.Fixed(body.Soundboard.BraceMassG, 0)} g",
                ],
                .. Patch(guitar.Design.Bridge),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };
    }

    private static IEnumerable<IReadOnlyList<string>> Patch(BridgeDesign bridge)
    {
        if (bridge.PatchThicknessMm > 0)
        {
            double across = bridge.LengthMm + (2 * bridge.PatchMarginMm);
            double along = bridge.WidthMm + (2 * bridge.PatchMarginMm);
            yield return
            [
                SheetsWords.Of["soundboard.patch"],
                $"{Figures.Mm(across)} × {Figures.Mm(along)} × {Figures.Fixed(bridge.PatchThicknessMm, 1)} mm",
            ];
        }
    }
}

using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Strings;

namespace Formwright.Sheets.Action;

/// <summary>Nut and saddle at twice their size with slots, heights and places, and what each string does.</summary>
internal static class NutAndSaddleSheet
{
    private const double Scale = 2;
    private const double BeyondMm = 7;
    private const double CentsMm = 48;
    private const double LeastMm = 34;
    private const double GapMm = 4;

    // Beside the nut, which takes no more than half the sheet.
    private const double CareMm = 60;

    public static NamedSheet Of(Guitar guitar, NeckAndAction action)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.nut-and-saddle"), Paper.A4);
        Box area = sheet.Area;
        View nut = At(
            new View([.. Nut(guitar, action)])
            {
                Scale = Scale,
                Label = SheetsWords.Of["nut.view"],
            },
            area.TopMm
        );
        View saddle = At(
            new View([.. Saddle(guitar, action)])
            {
                Scale = Scale,
                Label = SheetsWords.Of["saddle.view"],
            },
            nut.Bounds().BottomMm - 6
        );
        View plan = At(
            new View([.. Plan(guitar, action)])
            {
                Scale = Scale,
                Label = SheetsWords.Of["saddle.plan"],
            },
            saddle.Bounds().BottomMm - 6
        );
        Table table = Table(action, area.WidthMm);
        Notes note = new("", [Note(guitar, action)], area.WidthMm);
        double top = plan.Bounds().BottomMm - 7;
        // The plot takes what table and note leave.
        double cents = top - area.BottomMm - table.Size.HeightMm - note.Size.HeightMm - (2 * GapMm);
        View At(View view, double topMm) => view.TopLeftAt(new Point(area.LeftMm, topMm));
        return new NamedSheet(
            "nut-and-saddle",
            sheet
                .Add(nut, saddle, plan)
                .Add(
                    Care.WithBone(CareMm) with
                    {
                        TopLeft = new Point(area.RightMm - CareMm, area.TopMm),
                    }
                )
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm, top),
                        GapMm,
                        table,
                        Cents(action, new Size(area.WidthMm, Math.Clamp(cents, LeastMm, CentsMm))),
                        note
                    )
                ),
            IsTiled: false
        );
    }

    // Seen from the fingerboard: y across, height over it up. The bass string of a right-handed instrument is on the left.
    private static IEnumerable<Item> Nut(Guitar guitar, NeckAndAction action)
    {
        double half = guitar.Design.Neck.WidthNutMm / 2;
        StringRow[] rows = [.. action.StringRows.OrderBy(row => row.Wire.NutYMm)];
        List<Segment> top =
        [
            new LineSegment(new Point(-half, 0)),
            new LineSegment(new Point(-half, rows[0].NutTopMm)),
        ];
        foreach (StringRow row in rows)
        {
            // A slot half round and half a string deep.
            double r = row.Wire.DiameterMm / 2;
            top.Add(new LineSegment(new Point(row.Wire.NutYMm - r, row.NutTopMm)));
            top.Add(new ArcSegment(new Point(row.Wire.NutYMm + r, row.NutTopMm), 1));
            yield return new Label(
                Figures.Mm(row.Wire.Number, 0),
                new Point(row.Wire.NutYMm, row.NutTopMm)
            )
            {
                Align = Align.Centre,
                ShiftMm = new(0, 2),
            };
        }

        top.Add(new LineSegment(new Point(half, rows[^1].NutTopMm)));
        yield return new Line(new Shape(new Point(half, 0), top, closed: true), LineStyle.Outline);
        yield return new OrdinateDimensions(
            new Point(-half, 0),
            [
                .. rows.Select(row => new Station(new Point(row.Wire.NutYMm, 0))),
                new Station(new Point(half, 0)),
            ],
            Side.Below,
            5
        )
        {
            Decimals = 2,
        };
    }

    // Seen from the tail: y across, height over the soundboard up.
    private static IEnumerable<Item> Saddle(Guitar guitar, NeckAndAction action)
    {
        double slot = guitar.Design.Saddle.SlotBottomMm;
        StringRow[] rows = [.. action.StringRows.OrderBy(row => row.Wire.SaddleYMm)];
        double left = rows[0].Wire.SaddleYMm - BeyondMm;
        double right = rows[^1].Wire.SaddleYMm + BeyondMm;
        yield return new Line(
            Shape.Polyline(
                [
                    new Point(left, slot),
                    new Point(left, rows[0].SaddleHeightMm),
                    .. rows.Select(row => new Point(row.Wire.SaddleYMm, row.SaddleHeightMm)),
                    new Point(right, rows[^1].SaddleHeightMm),
                    new Point(right, slot),
                ],
                closed: true
            ),
            LineStyle.Outline
        );
        yield return new Line(new Point(left - 6, 0), new Point(right + 6, 0), LineStyle.Datum);
        yield return new Label(SheetsWords.Of["saddle.soundboard"], new Point(0, 0))
        {
            Align = Align.Centre,
            ShiftMm = new(0, 1),
        };
        foreach (StringRow row in rows)
        {
            yield return new Line(
                Shape.Circle(
                    new Point(row.Wire.SaddleYMm, row.SaddleHeightMm + (row.Wire.DiameterMm / 2)),
                    row.Wire.DiameterMm / 2
                ),
                LineStyle.Detail
            );
            yield return new Label(
                Figures.Mm(row.Wire.Number, 0),
                new Point(row.Wire.SaddleYMm, row.SaddleHeightMm)
            )
            {
                Align = Align.Centre,
                ShiftMm = new(0, 4),
            };
        }

        yield return new LinearDimension(
            new Point(left, 0),
            new Point(left, rows[0].SaddleHeightMm),
            Side.Left,
            5
        );
        yield return new LinearDimension(
            new Point(right, 0),
            new Point(right, rows[^1].SaddleHeightMm),
            Side.Right,
            5
        );
        yield return new OrdinateDimensions(
            new Point(rows[0].Wire.SaddleYMm, slot),
            [.. rows.Skip(1).Select(row => new Station(new Point(row.Wire.SaddleYMm, slot)))],
            Side.Below,
            9
        )
        {
            Decimals = 2,
        };
    }

    // From above, the nut's side up: how far each string's place lies past the bare scale.
    private static IEnumerable<Item> Plan(Guitar guitar, NeckAndAction action)
    {
        double scale = guitar.Design.Identity.ScaleMm;
        IntonationPlan plan = action.Compensation;
        InstrumentString[] wires = [.. action.Strings.Strings.OrderBy(wire => wire.SaddleYMm)];
        double left = wires[0].SaddleYMm - BeyondMm;
        double right = wires[^1].SaddleYMm + BeyondMm;
        double half = guitar.Design.Saddle.ThicknessMm / 2;
        double Line(double y) => -(plan.SaddleSetBackMm + (plan.SaddleSlope * y));
        yield return new Line(
            Shape.Polyline(
                [
                    new Point(left, Line(left) + half),
                    new Point(right, Line(right) + half),
                    new Point(right, Line(right) - half),
                    new Point(left, Line(left) - half),
                ],
                closed: true
            ),
            LineStyle.Outline
        );
        yield return new Line(
            new Point(left - 6, 0),
            new Point(right + 6, 0),
            LineStyle.Centreline
        );

        // Over the line at the end where the saddle stands further from it.
        bool atRight = plan.SaddleSlope >= 0;
        yield return new Label(
            SheetsWords.Of.Format("saddle.bare-scale", scale),
            new Point(atRight ? right + 6 : left - 6, 0)
        )
        {
            Align = atRight ? Align.Right : Align.Left,
            ShiftMm = new(0, 1.2),
            Clear = true,
        };
        foreach (StringRow row in action.StringRows)
        {
            double back = row.SaddleMm - scale;
            yield return new Line(
                new Point(row.Wire.SaddleYMm, 3),
                new Point(row.Wire.SaddleYMm, -back - half - 1.5),
                LineStyle.Hair
            );
            yield return new Dot(new Point(row.Wire.SaddleYMm, -back), 1.4);
            yield return new Label(
                Figures.Fixed(back, 1),
                new Point(row.Wire.SaddleYMm, -back - half - 1.5)
            )
            {
                Align = Align.Centre,
                Rise = Rise.Top,
                ShiftMm = new(0, -1.2),
                Style = TextStyle.SmallFigure,
            };
        }
    }

    private static Table Table(NeckAndAction action, double widthMm) =>
        new(
            SheetsWords.Of["strings.table"],
            [
                new Column(SheetsWords.Of["column.string"]),
                new Column(SheetsWords.Of["column.tension"], Align.Right),
                new Column(SheetsWords.Of["column.diameter"], Align.Right),
                new Column(SheetsWords.Of["column.nut-slot"], Align.Right) { Strong = true },
                new Column(SheetsWords.Of["column.nut-moved"], Align.Right),
                new Column(SheetsWords.Of["column.saddle-at"], Align.Right),
                new Column(SheetsWords.Of["column.saddle-height"], Align.Right) { Strong = true },
                new Column(SheetsWords.Of["column.cents-before"], Align.Right),
                new Column(SheetsWords.Of["column.cents-after"], Align.Right),
            ],
            [
                .. action.StringRows.Select(
                    (row, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{row.Wire.Number}  {row.Wire.Note}",
                                Figures.Fixed(row.Wire.TensionN, 1),
                                Figures.Fixed(row.Wire.DiameterMm, 2),
                                Figures.Fixed(row.NutSlotMm, 2),
                                Figures.Fixed(row.NutMm, 2),
                                Figures.Fixed(row.SaddleMm, 1),
                                Figures.Fixed(row.SaddleHeightMm, 1),
                                Figures.Fixed(action.Intonation.None.Strings[i].RmsCents, 1),
                                Figures.Fixed(action.Compensation.Strings[i].RmsCents, 1),
                            ]
                ),
            ]
        )
        {
            WidthMm = widthMm,
        };

    private static Plot Cents(NeckAndAction action, Size size)
    {
        IReadOnlyList<StringIntonation> strings = action.Compensation.Strings;
        int frets = action.Frets.Count - 1;
        double reach = Math.Max(
            5,
            Math.Ceiling(strings.Max(each => Math.Abs(each.WorstCents)) / 5) * 5
        );
        return new Plot(
            SheetsWords.Of["strings.cents"],
            new PlotAxis(SheetsWords.Of["column.fret"], 0, frets),
            new PlotAxis(SheetsWords.Of["strings.cents-axis"], -reach, reach),
            [
                .. strings.Select(each => new PlotSeries(
                    [.. each.Cents.Select((cents, k) => new Point(k, cents))],
                    Figures.Mm(each.Number, 0)
                )
                {
                    Style =
                        each.Number == 1 || each.Number == strings.Count
                            ? LineStyle.Curve
                            : LineStyle.Detail,
                }),
            ],
            size
        );
    }

    private static string Note(Guitar guitar, NeckAndAction action)
    {
        double angle = Math.Atan(action.Compensation.SaddleSlope) * 180 / Math.PI;
        return SheetsWords.Of.Format(
            "strings.note",
            action.Strings.TotalTensionN,
            guitar.Design.Saddle.SlotBottomMm,
            action.Compensation.SaddleSetBackMm,
            Math.Abs(angle)
        );
    }
}

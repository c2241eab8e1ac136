using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Wood;

namespace Formwright.Sheets.Body;

/// <summary>The back: depth along the centreline, plan with its bars, and each bar from the side at full size with its gauge.</summary>
internal static class BackSheet
{
    private const double ToleranceMm = 0.02;
    private const double GapMm = 10;
    private const double DepthStepMm = 40;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View gauges = new([.. Bars(body.Back)]) { Label = SheetsWords.Of["back.gauges-view"] };
        View plan = new([.. Plan(guitar, body.Back)], ViewFrame.Workboard)
        {
            Scale = 0.2,
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["back.view"],
        };
        View side = new([.. Side(guitar, body.Back)], ViewFrame.SideView)
        {
            Scale = 0.5,
            Label = SheetsWords.Of["back.side-view"],
        };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.back"),
            [gauges, side],
            [
                new ViewBlock(plan),
                BarTable(body.Back),
                Depths(guitar, body.Back),
                Arch(guitar, body.Back),
                new Notes("", [SheetsWords.Of["back.note"]], 110),
            ],
            500
        );
        return new NamedSheet("back", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Bars(BackPlan back)
    {
        double y = 0;
        foreach ((BackBar bar, int i) in back.Bars.Select((bar, i) => (bar, i)))
        {
            y -= Math.Max(0, bar.Gauge.MostMm);
            Point at = new(0, y);
            double Height(double along)
            {
                Instrument.Body.Soundboard.BarShape shape = new(
                    bar.WidthMm,
                    bar.HeightMm,
                    bar.EndHeightMm,
                    bar.ScoopMm,
                    BraceSection.Square
                );
                return shape.HeightAt(along, bar.LengthMm);
            }

            foreach (Item item in GaugeItems.Bar(bar.Gauge, Height, "", at))
            {
                yield return item;
            }

            yield return new Label($"R{i + 1}", at + new Vector(70, -0.45 * bar.HeightMm))
            {
                Rise = Rise.Middle,
                Style = TextStyle.Heading,
            };
            y -= bar.HeightMm + GapMm;
        }
    }

    private static IEnumerable<Item> Plan(Guitar guitar, BackPlan back)
    {
        yield return new Line(
            Shape.Of(guitar.Outline.Closed.ToBeziers(ToleranceMm)),
            LineStyle.Outline
        );
        double length = guitar.Outline.BodyLengthMm;
        yield return new Line(new Point(-20, 0), new Point(length + 20, 0), LineStyle.Centreline);
        double strip = guitar.Design.Back.StripWidthMm / 2;
        if (strip > 0)
        {
            yield return new Line(
                new Point(10, -strip),
                new Point(length - 16, -strip),
                LineStyle.Detail
            );
            yield return new Line(
                new Point(10, strip),
                new Point(length - 16, strip),
                LineStyle.Detail
            );
        }

        foreach (BackBar bar in back.Bars)
        {
            double w = bar.WidthMm / 2;
            yield return new Region(
                Shape.Rectangle(Box.Of(bar.AtMm - w, -bar.HalfMm, bar.AtMm + w, bar.HalfMm))
            )
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Detail,
            };
        }

        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                .. back.Bars.Select(
                    (bar, i) => new Station(new Point(bar.AtMm, -bar.HalfMm), $"R{i + 1}")
                ),
                new Station(new Point(length, 0), SheetsWords.Of["station.tail"]),
            ],
            Drawing.Side.Left,
            8
        );
    }

    // Along the centreline from the bass side: heel at the left, soundboard on top.
    private static IEnumerable<Item> Side(Guitar guitar, BackPlan back)
    {
        double length = guitar.Outline.BodyLengthMm;
        List<Point> top = [];
        List<Point> bottom = [];
        for (int i = 0; i <= 120; i++)
        {
            double u = length * i / 120;
            top.Add(new(u, guitar.Dome.Field.HeightAt(new Point(u, 0))));
            bottom.Add(new(u, -back.Depth.HeightAt(new Point(u, 0))));
        }

        yield return new Region(
            Shape.Polyline([.. top, .. bottom.AsEnumerable().Reverse()], closed: true)
        )
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        yield return new Line(new Point(-10, 0), new Point(length + 10, 0), LineStyle.Datum);
        yield return Depth(0, Drawing.Side.Left, 8);
        if (back.DeepestAtMm > 30 && back.DeepestAtMm < length - 30)
        {
            yield return Depth(back.DeepestAtMm, Drawing.Side.Right, 0);
        }

        yield return Depth(length, Drawing.Side.Right, 8);

        LinearDimension Depth(double u, Drawing.Side side, double offset) =>
            new(new Point(u, 0), new Point(u, -back.Depth.HeightAt(new Point(u, 0))), side, offset);
    }

    private static Table BarTable(BackPlan back) =>
        new(
            SheetsWords.Of["back.bars"],
            [
                new Column(SheetsWords.Of["column.bar"]),
                new Column(SheetsWords.Of["column.station"], Align.Right, 20),
                new Column(SheetsWords.Of["column.length"], Align.Right, 18),
                new Column(SheetsWords.Of["column.size"], Align.Right, 22),
                new Column(SheetsWords.Of["column.rise"], Align.Right, 14) { Strong = true },
                new Column(SheetsWords.Of["column.radius"], Align.Right, 18),
                new Column(SheetsWords.Of["column.mass"], Align.Right, 14),
            ],
            [
                .. back.Bars.Select(
                    (bar, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"R{i + 1}",
                                Figures.Fixed(bar.AtMm, 1),
                                Figures.Fixed(bar.LengthMm, 1),
                                $"{Figures.Mm(bar.WidthMm)} × {Figures.Mm(bar.HeightMm)}",
                                Figures.Fixed(bar.Gauge.MostMm, 2),
                                double.IsFinite(bar.Gauge.MeanRadiusMm)
                                    ? Figures.Fixed(bar.Gauge.MeanRadiusMm, 0)
                                    : SheetsWords.Of["braces.flat"],
                                Figures.Fixed(bar.MassG, 1),
                            ]
                ),
            ]
        )
        {
            WidthMm = 154,
        };

    private static Table Depths(Guitar guitar, BackPlan back)
    {
        List<IReadOnlyList<string>> rows = [];
        double length = guitar.Outline.BodyLengthMm;
        for (double u = 0; u < length - 1; u += DepthStepMm)
        {
            rows.Add(Row(u));
        }

        rows.Add(Row(length));
        return new Table(
            SheetsWords.Of["back.depths"],
            [
                new Column(SheetsWords.Of["column.station"], Align.Right, 22),
                new Column(SheetsWords.Of["column.middle"], Align.Right, 20),
                new Column(SheetsWords.Of["column.edge-height"], Align.Right, 22),
            ],
            rows
        );

        string[] Row(double u)
        {
            Point edge = new(u, guitar.Outline.WidthAt(u) / 2);
            return
            [
                Figures.Fixed(u, 0),
                Figures.Fixed(back.Depth.HeightAt(new Point(u, 0)), 1),
                Figures.Fixed(back.Depth.HeightAt(edge), 1),
            ];
        }
    }

    private static Table Arch(Guitar guitar, BackPlan back)
    {
        BackDesign design = guitar.Design.Back;
        double width = guitar.Outline.Turns.Max(row => row.WidthMm);
        return new Table(
            SheetsWords.Of["back.arch"],
            [new Column(""), new Column("", Align.Right, 30)],
            [
                [SheetsWords.Of["back.long-rise"], $"{Figures.Fixed(back.LongRiseMm, 2)} mm"],
                [SheetsWords.Of["back.cross-rise"], $"{Figures.Fixed(back.CrossRiseMm, 2)} mm"],
                [
                    SheetsWords.Of.Format("back.sagitta", width),
                    $"{Figures.Fixed(design.CrossRadiusMm > 0 ? Sagitta.OfRadius(design.CrossRadiusMm, width) : 0, 2)} mm",
                ],
                [SheetsWords.Of["back.volume"], $"{Figures.Fixed(back.VolumeL, 2)} l"],
                [SheetsWords.Of["back.mass"], $"{Figures.Fixed(back.MassG, 0)} g"],
            ]
        )
        {
            WidthMm = 110,
        };
    }
}

using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;

namespace Formwright.Sheets.Action;

/// <summary>
/// The straight-edge gauge: where the straight edge lies on the frets, and a wedge at full size that is pushed under it at the saddle. It reads the
/// projection and, beside it, the saddle that goes with it.
/// </summary>
internal static class StraightEdgeSheet
{
    private const double Scale = 0.2;
    private const double Heights = 16;

    // Rise of the wedge: one in fifteen, so that a tenth of a mm is one and a half along it.
    private const double Slope = 1.0 / 15;
    private const double WedgeMm = 150;
    private const double FootMm = 8;

    public static NamedSheet Of(Guitar guitar, NeckAndAction action)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.straight-edge", "document.check"), Paper.A4);
        Box area = sheet.Area;
        View side = new([.. Side(guitar, action)], ViewFrame.SideView)
        {
            Scale = Scale,
            Heights = Heights,
            Label = SheetsWords.Of["straight-edge.view"],
        };
        side = side.TopLeftAt(area.TopLeft);
        View wedge = new([.. Wedge(action)]) { Label = SheetsWords.Of["straight-edge.wedge"] };
        wedge = wedge.TopLeftAt(new Point(area.LeftMm, side.Bounds().BottomMm - 8));
        double below = wedge.Bounds().BottomMm - 8;
        return new NamedSheet(
            "straight-edge",
            sheet
                .Add(side, wedge)
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm, below),
                        6,
                        Table(action, area.WidthMm),
                        new Notes(
                            SheetsWords.Of["straight-edge.how"],
                            [
                                SheetsWords.Of["straight-edge.how-1"],
                                SheetsWords.Of["straight-edge.how-2"],
                                SheetsWords.Of["straight-edge.how-3"],
                            ],
                            area.WidthMm
                        )
                        {
                            Numbered = true,
                        }
                    )
                ),
            IsTiled: false
        );
    }

    private static IEnumerable<Item> Side(Guitar guitar, NeckAndAction action)
    {
        HeightChain free = action.Free;
        foreach (Item item in ChainView.Of(guitar, action, free, withStrings: false))
        {
            yield return item;
        }

        foreach (Item item in ChainView.Places(guitar, action))
        {
            yield return item;
        }

        double join = guitar.JoinMm;
        double saddle = action.Model.Geometry.SaddleMm.Average();
        double end = saddle + 8;
        double atNut = ChainView.Crown(free, 0);
        double slope = (free.ProjectionMm + free.DomeMm - atNut) / saddle;
        double At(double x) => atNut + (slope * x);
        const double deep = 2.2;
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(0, At(0)),
                    new Point(end, At(end)),
                    new Point(end, At(end) + deep),
                    new Point(0, At(0) + deep),
                ],
                closed: true
            )
        )
        {
            Edge = LineStyle.Outline,
        };
        yield return new Label(
            SheetsWords.Of["gaps.straight-edge"],
            new Point(join * 0.6, At(join * 0.6) + (deep / 2))
        )
        {
            Align = Align.Centre,
            Rise = Rise.Middle,
        };
        yield return new LinearDimension(
            new Point(saddle, free.DomeMm),
            new Point(saddle, At(saddle)),
            Drawing.Side.Right,
            8
        )
        {
            Decimals = 2,
        };
    }

    // The wedge stands on the soundboard; its upper edge is read where the straight edge touches it.
    private static IEnumerable<Item> Wedge(NeckAndAction action)
    {
        double tall = WedgeMm * Slope;
        yield return new Line(
            Shape.Polyline(
                [new Point(0, 0), new Point(WedgeMm, 0), new Point(WedgeMm, tall)],
                closed: true
            ),
            LineStyle.Outline
        );
        foreach (int tenths in Enumerable.Range(1, 99))
        {
            double gap = tenths / 10.0;
            double x = gap / Slope;
            bool whole = tenths % 10 == 0;
            bool half = tenths % 5 == 0;
            double down =
                whole ? 0
                : half ? gap * 0.45
                : gap * 0.75;
            yield return new Line(
                new Point(x, gap),
                new Point(x, Math.Max(down, gap - 3)),
                half ? LineStyle.Detail : LineStyle.Hair
            );
            if (!half)
            {
                continue;
            }

            yield return new Label(Figures.Mm(gap, 1), new Point(x, gap))
            {
                Align = Align.Centre,
                Rise = Rise.Baseline,
                ShiftMm = new(0, 1.4),
                Style = whole
                    ? TextStyle.SmallFigure with
                    {
                        Weight = Weight.SemiBold,
                    }
                    : TextStyle.Body,
            };
        }

        yield return new Label(SheetsWords.Of["straight-edge.gap"], new Point(0, 10))
        {
            Rise = Rise.Baseline,
        };

        // The design's own place.
        double own = action.Free.ProjectionMm;
        if (own > 0 && own < tall)
        {
            yield return new Dot(new Point(own / Slope, own / 2), 1.6);
        }

        // Saddle that the projection asks for: one for one.
        double saddle = action.Needed.SaddleMm - action.Free.ProjectionMm;
        for (double s = Math.Ceiling(saddle * 2) / 2; s <= saddle + tall; s += 0.5)
        {
            double x = (s - saddle) / Slope;
            bool whole = Math.Abs(s - Math.Round(s)) < 1e-9;
            if (x < 4)
            {
                continue;
            }

            yield return new Line(
                new Point(x, 0),
                new Point(x, whole ? -2.5 : -1.5),
                LineStyle.Detail
            );
            if (whole)
            {
                yield return new Label(Figures.Mm(s, 1), new Point(x, 0))
                {
                    Align = Align.Centre,
                    Rise = Rise.Top,
                    ShiftMm = new(0, -3.5),
                    Style = TextStyle.SmallFigure,
                };
            }
        }

        yield return new Label(SheetsWords.Of["straight-edge.saddle"], new Point(0, 0))
        {
            Rise = Rise.Top,
            ShiftMm = new(0, -FootMm),
        };
    }

    private static Table Table(NeckAndAction action, double widthMm)
    {
        ChainGeometry geometry = action.Model.Geometry;
        HeightChain strung = action.Strung;
        List<IReadOnlyList<string>> rows = [];
        for (int k = 1; k < strung.BowAtFretMm.Count; k += 2)
        {
            rows.Add([
                SheetsWords.Of.Format("straight-edge.fret", k),
                Figures.Fixed(geometry.FretsMm[k], 1),
                Figures.Fixed(action.Free.BowAtFretMm[k], 2),
                Figures.Fixed(strung.BowAtFretMm[k], 2),
                "",
            ]);
        }

        rows.Add([
            SheetsWords.Of["station.saddle"],
            Figures.Fixed(geometry.SaddleMm.Average(), 1),
            Figures.Fixed(action.Free.ProjectionMm, 2),
            "",
            "",
        ]);
        return new Table(
            SheetsWords.Of["straight-edge.table"],
            [
                new Column(SheetsWords.Of["column.place"]),
                new Column(SheetsWords.Of["column.from-nut"], Align.Right, 26),
                new Column(SheetsWords.Of["column.free"], Align.Right, 26) { Strong = true },
                new Column(SheetsWords.Of["column.strung"], Align.Right, 26),
                new Column(SheetsWords.Of["column.found"], Align.Right, 26),
            ],
            rows
        )
        {
            WidthMm = widthMm,
        };
    }
}

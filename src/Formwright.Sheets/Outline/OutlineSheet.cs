using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;

namespace Formwright.Sheets.Outline;

/// <summary>The outline at full size, seen from the front, with its dimensions, its curvature and its table of widths.</summary>
internal static class OutlineSheet
{
    private const double ToleranceMm = 0.01;
    private const int Hairs = 160;
    private const double ColumnMm = 150;

    public static NamedSheet Of(Guitar guitar)
    {
        View view = new([.. Items(guitar)], ViewFrame.Front) { RotationRad = View.NeckUp };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, "sheet.outline"),
            view,
            Widths(guitar),
            WhatFollows(guitar),
            new Notes("", [SheetsWords.Of["outline.note"]], ColumnMm)
            {
                Style = TextStyle.Body.Larger,
            }
        );
        return new NamedSheet("outline", sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Guitar guitar)
    {
        OutlineDesign design = guitar.Design.Outline;
        double length = design.BodyLengthMm;
        foreach (Item hair in CurvatureHairs(guitar))
        {
            yield return hair;
        }

        yield return new Line(
            Shape.Of(guitar.Outline.Closed.ToBeziers(ToleranceMm)),
            LineStyle.Outline
        );
        yield return new Line(new Point(-14, 0), new Point(length + 14, 0), LineStyle.Centreline);
        SoundholeDesign hole = guitar.Design.Soundhole;
        Point soundhole = new(hole.AtMm, 0);
        yield return new Line(Shape.Circle(soundhole, hole.RadiusMm), LineStyle.Detail);
        yield return new DiameterDimension(soundhole, 2 * hole.RadiusMm, new Vector(14, 10));
        foreach (HarmonicBarDesign bar in guitar.Design.HarmonicBars)
        {
            double half = (guitar.Outline.WidthAt(bar.AtMm) / 2) - guitar.Design.Ribs.ThicknessMm;
            double w = bar.WidthMm / 2;
            yield return new Line(
                Shape.Rectangle(Box.Of(bar.AtMm - w, -half, bar.AtMm + w, half)),
                LineStyle.Hidden
            );
        }

        BoutDesign[] bouts = [design.UpperBout, design.Waist, design.LowerBout];
        foreach (BoutDesign bout in bouts)
        {
            Point bass = new(bout.AtMm, -bout.WidthMm / 2);
            Point treble = new(bout.AtMm, bout.WidthMm / 2);
            yield return new LinearDimension(bass, treble, Side.Above, 0) { Share = 0.38 };
        }

        foreach (Item radius in Radii(guitar, bouts))
        {
            yield return radius;
        }

        double outside = -design.LowerBout.WidthMm / 2;
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                new Station(new Point(0, outside * 0.3), SheetsWords.Of["station.heel"]),
                .. guitar.Design.HarmonicBars.Select(bar => new Station(
                    new Point(bar.AtMm, -guitar.Outline.WidthAt(bar.AtMm) / 2),
                    SheetsWords.Of["station.bar"]
                )),
                new Station(
                    new Point(design.UpperBout.AtMm, -design.UpperBout.WidthMm / 2),
                    SheetsWords.Of["station.upper-bout"]
                ),
                new Station(
                    new Point(hole.AtMm, -hole.RadiusMm),
                    SheetsWords.Of["station.soundhole"]
                ),
                new Station(
                    new Point(design.Waist.AtMm, -design.Waist.WidthMm / 2),
                    SheetsWords.Of["station.waist"]
                ),
                new Station(
                    new Point(design.LowerBout.AtMm, outside),
                    SheetsWords.Of["station.lower-bout"]
                ),
                new Station(new Point(length, outside * 0.3), SheetsWords.Of["station.tail"]),
            ],
            Side.Left,
            12
        ).Larger;
        yield return new BassTreble(
            ViewFrame.Front,
            design.UpperBout.AtMm + 30,
            (design.UpperBout.WidthMm / 2) - 30
        )
        {
            Style = TextStyle.Body.Larger,
        };
    }

    // Normals as long as the curvature, on the treble side, and the line through their ends.
    private static IEnumerable<Item> CurvatureHairs(Guitar guitar)
    {
        Chain half = guitar.Outline.Half;
        double longest = 1 / guitar.Figures.TightestRadiusMm;
        double factor = 26 / longest;
        List<Point> ends = [];
        for (int i = 0; i <= Hairs; i++)
        {
            CurvePoint at = half.At(half.LengthMm * i / Hairs);
            Point end = at.Position - (at.Normal * (at.Curvature * factor));
            ends.Add(end);
            yield return new Line(at.Position, end, LineStyle.Hair);
        }

        yield return new Line(Shape.Polyline(ends), LineStyle.Contour);
    }

    private static IEnumerable<Item> Radii(Guitar guitar, BoutDesign[] bouts)
    {
        foreach (BoutDesign bout in bouts)
        {
            if (guitar.Outline.AtStation(bout.AtMm) is not { } place || place.Curve.Curvature == 0)
            {
                continue;
            }

            double radius = place.Curve.RadiusMm;
            bool hollow = place.Curve.Curvature > 0;
            Point foot = new(place.Position.X, -place.Position.Y);
            Point centre = new(foot.X, hollow ? foot.Y - radius : foot.Y + radius);
            yield return new RadiusDimension(
                centre,
                radius,
                hollow ? Math.PI / 2 * 0.96 : -Math.PI / 2 * 0.96,
                -22
            );
        }
    }

    private static Table Widths(Guitar guitar) =>
        new(
            SheetsWords.Of["outline.widths"],
            [
                new Column(SheetsWords.Of["column.station"], Align.Right, 34),
                new Column(SheetsWords.Of["column.width"], Align.Right, 44),
                new Column(SheetsWords.Of["column.radius"], Align.Right, 44),
            ],
            [
                .. guitar
                    .Figures.Table.Where(
                        (row, i) => i % 2 == 0 || i == guitar.Figures.Table.Count - 1
                    )
                    .Select(row =>
                        (IReadOnlyList<string>)
                            [
                                Figures.Mm(row.UMm),
                                Figures.Fixed(row.WidthMm, 2),
                                Radius(row.CurvaturePerMm),
                            ]
                    ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    // Hollow radii carry a minus sign, as the column's head says.
    private static string Radius(double curvature) =>
        Math.Abs(curvature) < 1e-4 || !double.IsFinite(curvature)
            ? "–"
            : Figures.Fixed(1 / curvature, 1);

    private static Table WhatFollows(Guitar guitar) =>
        new(
            SheetsWords.Of["outline.follows"],
            [new Column(""), new Column("", Align.Right, 34)],
            [
                [
                    SheetsWords.Of["outline.half-length"],
                    $"{Figures.Fixed(guitar.Figures.HalfPerimeterMm, 2)} mm",
                ],
                [SheetsWords.Of["outline.area"], $"{guitar.Figures.AreaMm2 / 100:0.0} cm²"],
                [SheetsWords.Of["outline.pieces"], $"{guitar.Figures.CurvaturePieces}"],
                [
                    SheetsWords.Of["outline.tightest-bout"],
                    $"{Figures.Fixed(guitar.Figures.TightestBoutMm, 1)} mm",
                ],
                [
                    SheetsWords.Of["outline.tightest-waist"],
                    $"{Figures.Fixed(guitar.Figures.TightestWaistMm, 1)} mm",
                ],
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };
}

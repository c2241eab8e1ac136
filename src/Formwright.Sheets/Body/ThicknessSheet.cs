using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Plates;

namespace Formwright.Sheets.Body;

/// <summary>The soundboard's thickness at full size, from inside: lines of equal thickness, and places to measure with room for what was found.</summary>
internal static class ThicknessSheet
{
    private const double ToleranceMm = 0.05;
    private const double ColumnMm = 200;

    // A calliper reaches this far apart in good time: some thirty places on a soundboard (our choice).
    private const double ApartMm = 62;

    // From a cross to the far end of the line to write on.
    private const double FigureMm = 14;

    public static NamedSheet Of(Guitar guitar, ThicknessMap map)
    {
        View view = new([.. Items(guitar, map)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["soundboard.view"],
        };
        SoundboardDesign board = guitar.Design.Soundboard;
        Table figures = new(
            SheetsWords.Of["thickness.heading"],
            [new Column(""), new Column("", Align.Right, 40)],
            [
                [SheetsWords.Of["thickness.middle"], $"{Figures.Fixed(map.MiddleMm, 2)} mm"],
                [SheetsWords.Of["thickness.edge"], $"{Figures.Fixed(map.EdgeMm, 2)} mm"],
                [SheetsWords.Of["thickness.band"], $"{Figures.Mm(board.EdgeBandMm)} mm"],
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };
        Notes how = new(
            SheetsWords.Of["thickness.how"],
            [
                SheetsWords.Of["thickness.how-1"],
                SheetsWords.Of["thickness.how-2"],
                SheetsWords.Of["thickness.how-3"],
                SheetsWords.Of["thickness.how-4"],
            ],
            ColumnMm
        )
        {
            Numbered = true,
            Style = TextStyle.Body.Larger,
        };
        Cautions care = Care.WithDust(ColumnMm, TextStyle.Body.Larger);
        return new NamedSheet(
            "thickness",
            Composing.WithColumn(Titles.Of(guitar, "sheet.thickness"), view, figures, how, care),
            IsTiled: true
        );
    }

    private static IEnumerable<Item> Items(Guitar guitar, ThicknessMap map)
    {
        Curves.Outline outline = guitar.Outline;
        yield return new Line(Shape.Of(outline.Closed.ToBeziers(ToleranceMm)), LineStyle.Outline);
        SoundholeDesign hole = guitar.Design.Soundhole;
        yield return new Line(
            Shape.Circle(new Point(hole.AtMm, 0), hole.RadiusMm),
            LineStyle.Outline
        );
        yield return new Line(
            new Point(-14, 0),
            new Point(outline.BodyLengthMm + 14, 0),
            LineStyle.Centreline
        );
        foreach (double level in Levels(map))
        {
            if (map.DistanceOf(level) is not { } inside || inside < 0.5)
            {
                continue;
            }

            foreach (OffsetPath path in Offset.Of(outline.Closed, inside).Paths)
            {
                yield return new Line(Shape.Of(path.ToBeziers(ToleranceMm)), LineStyle.Contour);
            }

            Point at = new(guitar.Design.Outline.LowerBout.AtMm, 0);
            double half = outline.WidthAt(at.X) / 2;
            foreach (int side in new[] { -1, 1 })
            {
                yield return new Label(
                    Figures.Fixed(level, 1),
                    new Point(at.X, side * (half - inside))
                )
                {
                    Align = Align.Centre,
                    Rise = Rise.Middle,
                    Clear = true,
                };
            }
        }

        foreach (Point place in Places(guitar))
        {
            // Figures stand towards the centreline, away from the edge, but never on the soundhole's.
            bool left = place.Y > 1;
            double end = Math.Abs(place.Y) - FigureMm;
            if (new Point(place.X, end).DistanceTo(new Point(hole.AtMm, 0)) < hole.RadiusMm + 6)
            {
                left = !left;
            }

            yield return new Cross(place, 2);
            yield return new Label(Figures.Fixed(map.At(place), 2), place)
            {
                ShiftMm = new(left ? -3 : 3, 1.2),
                Align = left ? Align.Right : Align.Left,
                Style = TextStyle.Strong,
                Clear = true,
            };
            yield return new Label("______", place)
            {
                ShiftMm = new(left ? -3 : 3, -3.6),
                Align = left ? Align.Right : Align.Left,
                Clear = true,
            };
        }

        BoutDesign upper = guitar.Design.Outline.UpperBout;
        yield return new BassTreble(ViewFrame.Workboard, 44, upper.WidthMm * 0.2)
        {
            Style = TextStyle.Body.Larger,
        };
    }

    // Steps of 0.1 mm, of 0.2 where there would be too many lines.
    private static IEnumerable<double> Levels(ThicknessMap map)
    {
        double low = Math.Min(map.EdgeMm, map.MiddleMm);
        double high = Math.Max(map.EdgeMm, map.MiddleMm);
        double step = high - low > 0.8 ? 0.2 : 0.1;
        for (int i = (int)Math.Ceiling((low / step) + 1e-6); i * step < high - 1e-6; i++)
        {
            yield return i * step;
        }
    }

    // Rows across, with a place near each edge, one on the centreline (beside the soundhole none) and evenly between.
    private static IEnumerable<Point> Places(Guitar guitar)
    {
        const double fromEdge = 14;
        Curves.Outline outline = guitar.Outline;
        SoundholeDesign hole = guitar.Design.Soundhole;
        int rows = (int)Math.Round((outline.BodyLengthMm - (2 * fromEdge)) / ApartMm);
        for (int i = 0; i <= rows; i++)
        {
            double u = fromEdge + ((outline.BodyLengthMm - (2 * fromEdge)) * i / rows);
            double reach = (outline.WidthAt(u) / 2) - fromEdge;
            int sides = Math.Max(1, (int)Math.Round(reach / ApartMm));
            for (int k = -sides; k <= sides; k++)
            {
                Point place = new(u, reach * k / sides);
                if (place.DistanceTo(new Point(hole.AtMm, 0)) > hole.RadiusMm + 8)
                {
                    yield return place;
                }
            }
        }
    }
}

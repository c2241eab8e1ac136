using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;

namespace Formwright.Sheets.Action;

/// <summary>The height chain from the side, at one stage: soundboard, neck, fingerboard with its frets, strings, saddle.</summary>
internal static class ChainView
{
    /// <summary>How far the view reaches past the saddle, mm.</summary>
    private const double PastSaddleMm = 45;

    private const double SaddleMm = 3;

    public static double EndMm(NeckAndAction action) =>
        action.Model.Geometry.SaddleMm.Max() + PastSaddleMm;

    /// <summary>The view without dimensions.</summary>
    public static IEnumerable<Item> Of(
        Guitar guitar,
        NeckAndAction action,
        HeightChain chain,
        bool withStrings = true
    )
    {
        double end = EndMm(action);
        yield return new Line(new Point(-8, 0), new Point(end, 0), LineStyle.Datum);
        List<Point> top =
        [
            .. BoardTop(action, chain, FretTable.EndMm(guitar.Design, action.Model)),
        ];
        Point[] face = [.. NeckFace(action, chain)];
        Point[] soundboard = [.. Soundboard(guitar, action, chain, end)];
        double boardEnd = top[^1].X;
        Shape board = Shape.Polyline(
            [
                .. top,
                .. soundboard
                    .Where(p => p.X < boardEnd)
                    .Append(new Point(boardEnd, HeightAt(soundboard, boardEnd)))
                    .Reverse(),
                .. face.Reverse(),
            ],
            closed: true
        );
        yield return new Region(board) { Fill = Tone.Wood, Edge = LineStyle.Detail };
        yield return new Line(Shape.Polyline(soundboard), LineStyle.Outline);
        yield return new Line(Shape.Polyline(face), LineStyle.Outline);
        double fret = action.Model.Figures.FretHeightMm;
        for (int k = 1; k < action.Frets.Count; k++)
        {
            double z = Crown(chain, k);
            double x = action.Frets[k].FromNutMm;
            yield return new Line(new Point(x, z - fret), new Point(x, z), LineStyle.Detail);
        }

        double nutTop = Math.Max(chain.Bass.NutMm, chain.Treble.NutMm);
        yield return new Line(new Point(0, face[0].Y), new Point(0, nutTop), LineStyle.Outline);
        if (!withStrings)
        {
            yield break;
        }

        foreach (StringHeights each in new[] { chain.Bass, chain.Treble })
        {
            int i = each == chain.Bass ? 0 : action.Model.Geometry.Count - 1;
            yield return new Line(
                new Point(action.Model.Geometry.NutMm[i], each.NutMm),
                new Point(action.Model.Geometry.SaddleMm[i], each.SaddleTopMm),
                each == chain.Bass ? LineStyle.Curve : LineStyle.Detail
            );
        }

        double saddle = action.Model.Geometry.SaddleMm.Average();
        double foot = HeightAt(soundboard, saddle);
        yield return new Region(
            Shape.Polyline(
                [
                    new Point(saddle - (SaddleMm / 2), foot),
                    new Point(saddle + (SaddleMm / 2), foot),
                    new Point(saddle + (SaddleMm / 2), chain.Bass.SaddleTopMm),
                    new Point(saddle - (SaddleMm / 2), chain.Bass.SaddleTopMm),
                ],
                closed: true
            )
        )
        {
            Edge = LineStyle.Detail,
        };
    }

    /// <summary>Crown of a fret in the middle of the outermost strings, mm.</summary>
    public static double Crown(HeightChain chain, int fret) =>
        0.5 * (chain.Bass.FretMm[fret] + chain.Treble.FretMm[fret]);

    /// <summary>Underside of a string over the datum at a place, mm.</summary>
    public static double StringAt(NeckAndAction action, StringHeights heights, int index, double x)
    {
        double nut = action.Model.Geometry.NutMm[index];
        double saddle = action.Model.Geometry.SaddleMm[index];
        return heights.NutMm + ((heights.SaddleTopMm - heights.NutMm) * (x - nut) / (saddle - nut));
    }

    /// <summary>The words under nut, join and saddle.</summary>
    public static IEnumerable<Item> Places(Guitar guitar, NeckAndAction action)
    {
        yield return Below(SheetsWords.Of["station.nut"], 0) with
        {
            Align = Align.Left,
        };
        yield return Below(
            SheetsWords.Of.Format("station.join-fret", guitar.Design.Identity.JoinFret),
            guitar.JoinMm
        );
        yield return Below(
            SheetsWords.Of["station.saddle"],
            action.Model.Geometry.SaddleMm.Average()
        );
    }

    /// <summary>The soundboard on the centreline, mm.</summary>
    private static IEnumerable<Point> Soundboard(
        Guitar guitar,
        NeckAndAction action,
        HeightChain chain,
        double end
    )
    {
        const double step = 4;
        for (double x = guitar.JoinMm; x < end; x += step)
        {
            yield return new Point(x, action.SoundboardMm(guitar, chain, x));
        }

        yield return new Point(end, action.SoundboardMm(guitar, chain, end));
    }

    // From the nut to the join, bent as the fret crowns are.
    private static IEnumerable<Point> NeckFace(NeckAndAction action, HeightChain chain)
    {
        ChainFigures f = action.Model.Figures;
        double join = action.Model.Geometry.JoinMm;
        for (int k = 0; k < action.Frets.Count && action.Frets[k].FromNutMm < join; k++)
        {
            double x = action.Frets[k].FromNutMm;
            double board =
                f.FingerboardNutMm + ((f.FingerboardJoinMm - f.FingerboardNutMm) * x / join);
            yield return new Point(x, Crown(chain, k) - f.FretHeightMm - board);
        }

        yield return new Point(join, 0);
    }

    private static IEnumerable<Point> BoardTop(NeckAndAction action, HeightChain chain, double end)
    {
        double fret = action.Model.Figures.FretHeightMm;
        IReadOnlyList<double> x = action.Model.Geometry.FretsMm;
        int last = 0;
        for (int k = 0; k < x.Count && x[k] < end; k++)
        {
            yield return new Point(x[k], Crown(chain, k) - fret);
            last = k;
        }

        double slope = (Crown(chain, last) - Crown(chain, last - 1)) / (x[last] - x[last - 1]);
        yield return new Point(end, Crown(chain, last) - fret + (slope * (end - x[last])));
    }

    private static double HeightAt(Point[] line, double x)
    {
        for (int i = 1; i < line.Length; i++)
        {
            if (line[i].X >= x)
            {
                double share = (x - line[i - 1].X) / (line[i].X - line[i - 1].X);
                return line[i - 1].Y + (share * (line[i].Y - line[i - 1].Y));
            }
        }

        return line[^1].Y;
    }

    private static Label Below(string text, double x) =>
        new(text, new Point(x, 0))
        {
            Align = Align.Centre,
            Rise = Rise.Top,
            ShiftMm = new(0, -2.5),
        };
}

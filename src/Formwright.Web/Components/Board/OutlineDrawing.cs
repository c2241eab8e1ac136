using System.Globalization;
using System.Text;
using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Web.Designs;
using Formwright.Web.Reading;

namespace Formwright.Web.Components.Board;

/// <summary>An outline laid out on the page: right is y (treble), down is u from the heel; 1 unit is 1 pixel, so that letters keep their size.</summary>
internal sealed class OutlineDrawing
{
    private const int Samples = 180;
    private const double PathToleranceMm = 0.02;

    /// <summary>Share of a radius at which its handle stands, from the outline.</summary>
    public const double RadiusShare = 0.3;

    // Room for body length and stations at the left, for hairs, and between them and the plot.
    private const double LeftPx = 124;
    private const double HairPx = 42;
    private const double GapPx = 48;

    // The height of a figure, and how far two beside each other stand from the centreline.
    private const double FigurePx = 28;
    private const double AsidePx = 36;
    private const int MostTracePoints = 1500;

    private readonly Reader reader;
    private CurvePoint[] points = [];
    private double plotPerBend;
    private string? probe;

    public OutlineDrawing(
        OutlineDesign design,
        Outline? outline,
        double width,
        double height,
        Reader reader
    )
    {
        Width = Math.Max(width, 320);
        Height = Math.Max(height, 360);
        PlotWidth = Width > 640 ? 130 : 84;
        double widest = Math.Max(design.LowerBout.WidthMm, design.UpperBout.WidthMm);
        Scale = Math.Min(
            (Height - 172) / design.BodyLengthMm,
            (Width - LeftPx - HairPx - PlotWidth - GapPx) / widest
        );
        Top = 84 + Math.Max(0, (Height - 172 - (Scale * design.BodyLengthMm)) / 2);
        double spare = Width - LeftPx - HairPx - PlotWidth - GapPx - (Scale * widest);
        Cx = LeftPx + 20 + (spare * 0.4) + (Scale * widest / 2);
        PlotX = Width - (PlotWidth * 0.42) - 26 - (spare * 0.25);
        Design = design;
        this.reader = reader;
        Figures = Place();
        if (outline is not null)
        {
            Draw(outline);
        }
    }

    public OutlineDesign Design { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>Pixels per mm.</summary>
    public double Scale { get; }

    /// <summary>Where the centreline stands.</summary>
    public double Cx { get; }

    /// <summary>Where the heel stands.</summary>
    public double Top { get; }

    public double Bottom => Top + (Scale * Design.BodyLengthMm);

    /// <summary>Where the curvature plot has its zero.</summary>
    public double PlotX { get; }

    public double PlotWidth { get; }

    /// <summary>
    /// Where the figures of each bout stand: that of its station along the drawing, that of its width across it. Those of bouts that lie close
    /// together make room for each other.
    /// </summary>
    public IReadOnlyDictionary<string, (double StationY, double WidthX)> Figures { get; }

    public string OutlinePath { get; private set; } = "";

    public string Hairs { get; private set; } = "";

    public string HairEnds { get; private set; } = "";

    public string Plot { get; private set; } = "";

    /// <summary>Places along the outline for the pointer: x, y, x on the plot, radius as text.</summary>
    public string Probe => probe ??= Probed();

    /// <summary>Another outline over this one, as a path; points of a trace as they were taken.</summary>
    public string Over(Overlay overlay)
    {
        StringBuilder path = new();
        if (overlay.Treble.Count + overlay.Bass.Count == 0)
        {
            BezierPath half = overlay.Fair.Half.ToBeziers(PathToleranceMm);
            Append(path, half.Pieces, 1);
            Append(path, half.Pieces, -1);
            return path.ToString();
        }

        foreach (
            IReadOnlyList<Point> side in (IReadOnlyList<Point>[])[overlay.Treble, overlay.Bass]
        )
        {
            // A trace may have far more points than a screen has places.
            int step = Math.Max(1, side.Count / MostTracePoints);
            for (int i = 0; i < side.Count; i += step)
            {
                path.Append(i == 0 ? 'M' : 'L').Append(At(side[i], 1));
            }
        }

        return path.ToString();
    }

    public double X(double yMm) => Cx + (yMm * Scale);

    public double Y(double uMm) => Top + (uMm * Scale);

    /// <summary>A number of the page to the tenth of a pixel.</summary>
    public static string N(double value) =>
        Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private Dictionary<string, (double StationY, double WidthX)> Place()
    {
        Bout[] bouts = [.. Bout.Of(Design).OrderBy(bout => bout.Design.AtMm)];
        double[] wishes = [.. bouts.Select(bout => Y(bout.Design.AtMm))];
        double[] stations = Spreading.Spread(wishes, FigurePx);
        Dictionary<string, (double, double)> places = [];
        for (int i = 0; i < bouts.Length; i++)
        {
            bool isClose =
                (i > 0 && wishes[i] - wishes[i - 1] < FigurePx)
                || (i + 1 < bouts.Length && wishes[i + 1] - wishes[i] < FigurePx);
            double aside =
                !isClose ? 0
                : i % 2 == 0 ? -AsidePx
                : AsidePx;
            places[bouts[i].Id] = (stations[i], Cx + aside);
        }

        return places;
    }

    private void Draw(Outline outline)
    {
        BezierPath treble = outline.Half.ToBeziers(PathToleranceMm);
        StringBuilder path = new();
        Append(path, treble.Pieces, 1);
        Append(path, treble.Pieces, -1);
        OutlinePath = path.ToString();

        Chain half = outline.Half;
        points =
        [
            .. Enumerable.Range(0, Samples + 1).Select(i => half.At(half.LengthMm * i / Samples)),
        ];
        double most = Math.Max(points.Max(point => Math.Abs(point.Curvature)), 1e-6);
        double hair = HairPx / Scale / most;
        plotPerBend = PlotWidth * 0.5 / most;
        StringBuilder hairs = new();
        StringBuilder ends = new();
        StringBuilder curve = new();
        for (int i = 0; i <= Samples; i++)
        {
            CurvePoint at = points[i];
            Point end = at.Position - (at.Normal * (at.Curvature * hair));
            string place = $"{N(X(at.Position.Y))} {N(Y(at.Position.X))}";
            string tip = $"{N(X(end.Y))} {N(Y(end.X))}";
            hairs.Append('M').Append(place).Append('L').Append(tip);
            ends.Append(i == 0 ? 'M' : 'L').Append(tip);
            curve
                .Append(i == 0 ? 'M' : 'L')
                .Append(OnPlot(at))
                .Append(' ')
                .Append(N(Y(at.Position.X)));
        }

        (Hairs, HairEnds, Plot) = (hairs.ToString(), ends.ToString(), curve.ToString());
    }

    private string Probed()
    {
        StringBuilder places = new();
        foreach (CurvePoint at in points)
        {
            string radius = Math.Abs(at.Curvature) < 1e-5 ? "∞" : reader.Figure(at.RadiusMm);
            places
                .Append(N(X(at.Position.Y)))
                .Append('|')
                .Append(N(Y(at.Position.X)))
                .Append('|')
                .Append(OnPlot(at))
                .Append("|R ")
                .Append(radius)
                .Append(';');
        }

        return places.ToString();
    }

    private string OnPlot(CurvePoint at) => N(PlotX + (at.Curvature * plotPerBend));

    private void Append(StringBuilder path, IReadOnlyList<CubicBezier> pieces, int side)
    {
        path.Append('M').Append(At(pieces[0].P0, side));
        foreach (CubicBezier piece in pieces)
        {
            path.Append('C')
                .Append(At(piece.P1, side))
                .Append(' ')
                .Append(At(piece.P2, side))
                .Append(' ')
                .Append(At(piece.P3, side));
        }
    }

    private string At(Point point, int side) =>
        $"{(X(side * point.Y)).ToString("0.##", CultureInfo.InvariantCulture)} {Y(point.X).ToString("0.##", CultureInfo.InvariantCulture)}";
}

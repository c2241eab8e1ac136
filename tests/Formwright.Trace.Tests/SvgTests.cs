using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;
using Formwright.Trace.Joining;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>SVG files of other libraries (files/make_svg.mjs), and what SVG 1.1 says of single cases.</summary>
public class SvgTests
{
    [Fact]
    public void A_circle_of_arcs_by_d3()
    {
        Trail trail = Only(Given.Read("d3-circle.svg"));
        Assert.True(trail.IsClosed);
        Assert.Equal(2 * Math.PI * 70, Length(trail), 0.05);
        Assert.Equal(new Point(150, -150), Rounded(trail.Box.Centre));
        Assert.All(trail.Points, p => Assert.Equal(70, p.DistanceTo(new(150, -150)), 1e-6));
    }

    [Fact]
    public void Transforms_that_cancel_each_other()
    {
        Trail trail = Only(Given.Read("d3-rounded.svg"));
        Assert.Equal((2 * (150 + 50)) + (2 * Math.PI * 25), Length(trail), 0.05);
        Assert.Equal(200, trail.Box.WidthMm, 1e-6);
        Assert.Equal(100, trail.Box.HeightMm, 1e-6);
        Assert.Equal(new Point(120, -70), Rounded(trail.Box.Centre));
    }

    [Fact]
    public void Every_segment_kind_means_the_same_however_it_is_written()
    {
        Trail verbose = Only(Given.Read("d3-all.svg"));
        foreach (string other in (string[])["svgo-all.svg", "rsvg-all.svg"])
        {
            Trail trail = Only(Given.Read(other));
            // cairo rounds to fixed points of 1/256 px, 0.001 mm here; over a perimeter of 700 mm that is up to 1 mm².
            Assert.Equal(Length(verbose), Length(trail), 0.02);
            Assert.Equal(Area(verbose), Area(trail), 1.0);
            Assert.All(trail.Points, p => Assert.InRange(Nearest(verbose, p), 0, 0.02));
        }
    }

    [Theory]
    [InlineData("M0 0 h10 v10 h-10z", 40)]
    [InlineData("m0,0 10,0 0,10 -10,0z", 40)]
    [InlineData("M0 0L10 0 10 10 0 10Z", 40)]
    [InlineData("M0 0H10V10H0V0", 40)]
    [InlineData("M10-5.5.5-5.5", 9.5)]
    [InlineData("M.5.5.5-.5", 1)]
    [InlineData("M0 0 1e1 0", 10)]
    [InlineData("M0 0A5 5 0 0 1 10 0", 15.70796)]
    [InlineData("M0 0a5 5 0 0110 0", 15.70796)]
    [InlineData("M0 0a5,5 0 1,0 10,0", 15.70796)]
    [InlineData("M0 0A1 1 0 0 1 10 0", 15.70796)]
    [InlineData("M0 0A0 5 0 0 1 10 0", 10)]
    [InlineData("M0 0Q5 0 10 0T20 0", 20)]
    [InlineData("M0 0C1 0 9 0 10 0S19 0 20 0", 20)]
    [InlineData("M0 0c1 0 9 0 10 0s9 0 10 0", 20)]
    [InlineData("M0 0T10 0", 10)]
    [InlineData("M0 0S5 0 10 0", 10)]
    public void Path_data(string data, double length)
    {
        TraceReading reading = Given.Read(
            $"<svg xmlns='http://www.w3.org/2000/svg' width='100mm' viewBox='0 0 100 100'><path d='{data}'/></svg>",
            "p.svg"
        );
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        Assert.Equal(length, Length(Only(reading.File)), 0.01);
    }

    [Fact]
    public void A_smooth_quadratic_reflects_the_control_point()
    {
        // T after Q: the second arch mirrors the first.
        Trail trail = OnlyOf("<path d='M0 50Q25 0 50 50T100 50'/>");
        Assert.Equal(-25, trail.Points.Max(p => p.Y), 0.01);
        Assert.Equal(-75, trail.Points.Min(p => p.Y), 0.01);
    }

    [Theory]
    [InlineData("<circle cx='50' cy='50' r='20'/>", 125.6637)]
    [InlineData("<ellipse cx='50' cy='50' rx='20' ry='10'/>", 96.88448)]
    [InlineData("<rect x='10' y='10' width='60' height='30'/>", 180)]
    [InlineData("<rect x='10' y='10' width='60' height='30' rx='10'/>", 162.8319)]
    [InlineData("<rect x='10' y='10' width='60' height='30' rx='90' ry='5'/>", 165)]
    [InlineData("<polygon points='0,0 30,0 30,40'/>", 120)]
    [InlineData("<polyline points='0 0 30 0,30 40'/>", 70)]
    [InlineData("<circle cx='2cm' cy='20mm' r='10%'/>", 62.83185)]
    public void Shapes(string shape, double length)
    {
        TraceFile file = Of(shape);
        Trail trail = new Sampler("s.svg").Of(
            file.Curves[0].Pieces,
            file.Curves[0].IsClosed,
            "",
            1,
            1
        );
        // The rounded rectangle with rx beyond half its width: rx is 30, ry 5, four quarters of an ellipse and two straights of 20.
        double expected = shape.Contains("rx='90'", StringComparison.Ordinal)
            ? (2 * 20) + EllipsePerimeter(30, 5)
            : length;
        Assert.Equal(expected, Length(trail), 0.02);
    }

    [Theory]
    // Width in a real unit, view box: user units are scaled.
    [InlineData("width='200mm' height='100mm' viewBox='0 0 100 50'", 2, true)]
    [InlineData("width='10cm' viewBox='0 0 100 100'", 1, true)]
    [InlineData("width='1in' viewBox='0 0 10 10'", 2.54, true)]
    [InlineData("width='72pt' viewBox='0 0 10 10'", 2.54, true)]
    [InlineData("height='6pc' viewBox='0 0 10 10'", 2.54, true)]
    [InlineData("width='400Q' viewBox='0 0 100 100'", 1, true)]
    // Aspect kept: the smaller of both.
    [InlineData("width='200mm' height='100mm' viewBox='0 0 100 100'", 1, true)]
    [InlineData(
        "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='xMidYMid slice'",
        2,
        true
    )]
    // No real unit: 96 px to the inch, and said to be a guess.
    [InlineData("", 0.264583, false)]
    [InlineData("width='100' height='100'", 0.264583, false)]
    [InlineData("width='200px' viewBox='0 0 100 100'", 0.529167, false)]
    [InlineData("viewBox='0 0 100 100'", 0.264583, false)]
    [InlineData("width='100%' height='100%' viewBox='0 0 100 100'", 0.264583, false)]
    public void Units(string root, double mmPerUnit, bool isStated)
    {
        TraceReading reading = Given.Read(
            $"<svg xmlns='http://www.w3.org/2000/svg' {root}><line x1='10' y1='10' x2='20' y2='10'/></svg>",
            "u.svg"
        );
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        Assert.Equal(mmPerUnit, reading.File.Unit.MmPerUnit, 1e-5);
        Assert.Equal(isStated, reading.File.Unit.IsStated);
        LinePiece line = Assert.IsType<LinePiece>(reading.File.Curves[0].Pieces[0]);
        Assert.Equal(10 * mmPerUnit, line.From.DistanceTo(line.To), 1e-4);
    }

    [Theory]
    [InlineData("translate(5)", 15, -10)]
    [InlineData("translate(5,3)", 15, -13)]
    [InlineData("scale(2)", 20, -20)]
    [InlineData("scale(2 3)", 20, -30)]
    [InlineData("rotate(90)", -10, -10)]
    [InlineData("rotate(90 10 0)", 0, 0)]
    [InlineData("skewX(45)", 20, -10)]
    [InlineData("skewY(45)", 10, -20)]
    [InlineData("matrix(0 1 -1 0 4 2)", -6, -12)]
    [InlineData("translate(1 1) scale(2)", 21, -21)]
    [InlineData("scale(2)translate(1,1)", 22, -22)]
    public void Transforms(string transform, double x, double y)
    {
        TraceFile file = Of($"<g transform='{transform}'><path d='M10 10L90 10'/></g>");
        Assert.Equal(x, file.Curves[0].Pieces[0].Start.X, 1e-9);
        Assert.Equal(y, file.Curves[0].Pieces[0].Start.Y, 1e-9);
    }

    [Fact]
    public void Copies_symbols_and_nested_views_are_placed()
    {
        TraceFile file = Of(
            """
            <defs><path id='a' d='M0 0L10 0'/><symbol id='s' viewBox='0 0 10 10'><path d='M0 0L10 0'/></symbol></defs>
            <use href='#a' x='5' y='7'/>
            <use href='#s' width='20' height='20'/>
            <svg x='30' y='30' width='40' height='20' viewBox='0 0 10 10'><path d='M0 0L10 0'/></svg>
            """
        );
        Assert.Equal(3, file.Curves.Count);
        Assert.Equal(new Point(5, -7), Rounded(file.Curves[0].Pieces[0].Start));
        // The nested view is 40 wide and 20 high: scale 2, in the middle.
        Assert.Equal(new Point(40, -30), Rounded(file.Curves[2].Pieces[0].Start));
        Assert.Equal(new Point(60, -30), Rounded(file.Curves[2].Pieces[0].End));
    }

    [Fact]
    public void Hidden_things_are_not_taken()
    {
        TraceFile file = Of(
            """
            <path d='M0 0L10 0'/>
            <path display='none' d='M0 0L10 0'/>
            <g style='display : none'><path d='M0 0L10 0'/></g>
            <clipPath><path d='M0 0L10 0'/></clipPath>
            <defs><path d='M0 0L10 0'/></defs>
            """
        );
        Assert.Single(file.Curves);
    }

    private static TraceFile Of(string body)
    {
        TraceReading reading = Given.Read(
            $"<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='100mm' height='100mm' viewBox='0 0 100 100'>{body}</svg>",
            "s.svg"
        );
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        return reading.File;
    }

    private static Trail OnlyOf(string body) => Only(Of(body));

    internal static Trail Only(TraceFile file)
    {
        IReadOnlyList<TracedCurve> joined = CurveJoiner.Join(file.Curves, 0.01);
        TracedCurve curve = Assert.Single(joined);
        return new Sampler(file.Name).Of(curve.Pieces, curve.IsClosed, "", 1, 1);
    }

    internal static double Length(Trail trail)
    {
        double sum = 0;
        for (int i = trail.IsClosed ? 0 : 1; i < trail.Points.Length; i++)
        {
            sum += trail.Points[i].DistanceTo(trail.Points[i > 0 ? i - 1 : ^1]);
        }

        return sum;
    }

    internal static double Area(Trail trail)
    {
        double sum = 0;
        for (int i = 0; i < trail.Points.Length; i++)
        {
            Point a = trail.Points[i > 0 ? i - 1 : ^1];
            sum += (a.X * trail.Points[i].Y) - (a.Y * trail.Points[i].X);
        }

        return Math.Abs(sum / 2);
    }

    private static double Nearest(Trail trail, Point place)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < trail.Points.Length; i++)
        {
            Point a = trail.Points[i > 0 ? i - 1 : ^1];
            Vector chord = trail.Points[i] - a;
            double t = Math.Clamp((place - a).Dot(chord) / Math.Max(1e-12, chord.Dot(chord)), 0, 1);
            least = Math.Min(least, place.DistanceTo(a + (chord * t)));
        }

        return least;
    }

    private static Point Rounded(Point p) => new(Math.Round(p.X, 6), Math.Round(p.Y, 6));

    private static double EllipsePerimeter(double a, double b)
    {
        double sum = 0;
        for (int i = 0; i < 100_000; i++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * i / 100_000);
            sum += Math.Sqrt((a * a * sin * sin) + (b * b * cos * cos));
        }

        return sum * 2 * Math.PI / 100_000;
    }
}

using Formwright.Curves;
using Xunit;

namespace Formwright.Fields.Tests;

public sealed class ContourTests
{
    private static readonly Region Body = Shapes.Guitar(12).BeyondX(106);
    private static readonly Dome Natural = new(Membrane.Solve(Body, 3), 3);
    private static readonly double[] Heights = [0.02, 0.25, 0.5, 1, 1.5, 2, 2.5, 2.9, 2.99];

    [Fact]
    public void They_lie_on_their_height_are_closed_and_follow_the_line()
    {
        foreach (
            IHeightField field in new IHeightField[] { Natural, new Dome(Natural.Membrane, 3, 2) }
        )
        {
            foreach (Contour contour in Contours.Of(field, Heights, 0.02))
            {
                Assert.True(contour.IsClosed);
                Assert.True(contour.Points.Count > 8);
                Assert.InRange(contour.LargestDeviationMm, 0, 0.02);
                double length = 0;
                for (int i = 0; i < contour.Points.Count; i++)
                {
                    Point here = contour.Points[i];
                    Point next = contour.Points[(i + 1) % contour.Points.Count];
                    Assert.Equal(contour.HeightMm, field.HeightAt(here), 1e-9);
                    Assert.NotEqual(here, next);
                    length += here.DistanceTo(next);
                    // Independent of how the line was refined: in the middle of a piece the height is off by slope × distance.
                    Point middle = here.Towards(next, 0.5);
                    double off = Math.Abs(field.HeightAt(middle) - contour.HeightMm);
                    double slope = field.At(middle).Slope.Length;
                    Assert.True(off <= (0.02 * slope) + 1e-4, $"{off} at slope {slope}");
                    // Higher ground to the left.
                    Vector left = (next - here).Left * (1 / here.DistanceTo(next));
                    Assert.True(field.At(middle).SlopeAlong(left) > 0);
                }
                Assert.True(length > 2 * Math.Sqrt(Math.PI * SignedArea(contour.Points)));
            }
        }
    }

    [Fact]
    public void Higher_lines_lie_within_lower_ones()
    {
        IReadOnlyList<Contour> contours = Contours.Of(Natural, Heights, 0.02);
        Assert.Equal(Heights, contours.Select(contour => contour.HeightMm));
        double[] areas = [.. contours.Select(contour => SignedArea(contour.Points))];
        Assert.Equal(areas.OrderDescending(), areas);
        Assert.True(areas[0] < Body.AreaMm2 && areas[^1] > 0);
        for (int i = 1; i < contours.Count; i++)
        {
            Region outer = Region.Of(contours[i - 1].Points);
            Assert.All(contours[i].Points, place => Assert.True(outer.Contains(place)));
        }
    }

    [Fact]
    public void Over_an_ellipse_they_are_ellipses_of_the_known_area()
    {
        // u = max u (1 - x²/a² - y²/b²): the line at a share h of the height holds the share 1 - h of the area.
        var dome = new Dome(Membrane.Solve(Shapes.Ellipse(180, 120, 0.4, new(3, 5)), 4), 3);
        foreach (Contour contour in Contours.Of(dome, [0.3, 1.5, 2.7], 0.001))
        {
            double expected = Math.PI * 180 * 120 * (1 - (contour.HeightMm / 3));
            Assert.Equal(expected, SignedArea(contour.Points), 1e-4 * expected);
            foreach (Point place in contour.Points)
            {
                Vector own = (place - new Point(3, 5)).Turned(-0.4);
                double share = (own.X * own.X / (180 * 180)) + (own.Y * own.Y / (120 * 120));
                Assert.Equal(1 - (contour.HeightMm / 3), share, 1e-6);
            }
        }
    }

    [Fact]
    public void Two_hills_give_two_lines_that_join_below_the_pass()
    {
        // Two discs joined by a narrow bridge.
        var dome = new Dome(Membrane.Solve(Dumbbell(), 1.5), 3);
        Assert.Equal(2, Contours.Of(dome, [2], 0.02).Count);
        Assert.Single(Contours.Of(dome, [0.1], 0.02));
        // Round a hole the outer line runs counter-clockwise, the inner one clockwise.
        var ring = new Dome(Membrane.Solve(Shapes.Annulus(50, 150, default), 3), 3);
        IReadOnlyList<Contour> both = Contours.Of(ring, [1], 0.02);
        Assert.Equal(2, both.Count);
        Assert.Contains(both, contour => SignedArea(contour.Points) > 0);
        Assert.Contains(both, contour => SignedArea(contour.Points) < 0);
    }

    [Fact]
    public void Where_the_field_ends_the_line_is_open()
    {
        // A plane over a disc: its level lines are chords.
        var slope = new Plane(Shapes.Ellipse(100, 100, points: 2000));
        Contour chord = Assert.Single(Contours.Of(slope, [30], 0.01));
        Assert.False(chord.IsClosed);
        Assert.All(chord.Points, place => Assert.Equal(20, place.X, 1e-6));
        double half = Math.Sqrt((100 * 100) - (20 * 20));
        // The last grid edge before the rim is where it stops.
        Assert.InRange(chord.Points.Max(place => place.Y), half - 3, half);
        Assert.InRange(chord.Points.Min(place => place.Y), -half, -half + 3);
    }

    [Fact]
    public void A_height_that_is_not_reached_has_no_line()
    {
        Assert.Empty(Contours.Of(Natural, [3.01, -1], 0.02));
        Assert.Empty(Contours.Of(Natural, [], 0.02));
        Assert.Throws<ArgumentOutOfRangeException>(() => Contours.Of(Natural, [double.NaN], 0.02));
        Assert.Throws<ArgumentOutOfRangeException>(() => Contours.Of(Natural, [1], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Contours.Of(Natural, [1], 0.1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Contours.Of(Natural, [1], 0.1, 1e-6));
    }

    private static Region Dumbbell()
    {
        var loop = new List<Point>();
        double start = Math.Asin(0.2);
        for (int i = 0; i <= 400; i++)
        {
            loop.Add(
                new Point(80, 0)
                    + (50 * Vector.At(-Math.PI + start + ((2 * Math.PI - (2 * start)) * i / 400)))
            );
        }
        return Region.Of([.. loop, .. loop.Select(place => new Point(-place.X, -place.Y))]);
    }

    private static double SignedArea(IReadOnlyList<Point> loop)
    {
        double twice = 0;
        for (int i = 0; i < loop.Count; i++)
        {
            Point next = loop[(i + 1) % loop.Count];
            twice += (loop[i].X * next.Y) - (next.X * loop[i].Y);
        }
        return twice / 2;
    }

    /// <summary>A slope of 1 in 2 that ends at the region's edge without coming down to 0 there.</summary>
    private sealed class Plane(Region region) : IHeightField
    {
        public Region Region => region;

        public HeightPeak Peak => new(new(100, 0), 70);

        public double HeightAt(Point place) => At(place).HeightMm;

        public HeightSample At(Point place) =>
            region.Contains(place) ? new(20 + (place.X / 2), new(0.5, 0), 0, 0, 0) : default;
    }
}

using CsCheck;
using Formwright.Curves;
using Formwright.Fields.Plates;
using Formwright.Testing;

namespace Formwright.Plates.Tests.Plates;

public sealed class PlateMeshTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(60)]
    [InlineData(30)]
    [InlineData(19.3)]
    [InlineData(10)]
    [InlineData(6)]
    public void TheHeronWithItsSoundhole(double edgeMm)
    {
        PlateMesh mesh = PlateMesh.Of(Rims.Heron, [Rims.HeronSoundhole], [], edgeMm);
        CheckTopology(mesh, holes: 1);
        Assert.InRange(mesh.SmallestAngleRad, (edgeMm > 42 ? 10 : 18) * Degree, 60 * Degree);
    }

    [Fact]
    public void BracesBecomeEdges()
    {
        Point[][] lines =
        [
            [new(60, -110), new(60, 110)],
            [new(206, -125), new(206, 125)],
            [new(215, 20), new(440, 50)],
            [new(215, -20), new(440, -50)],
            [new(215, 0), new(460, 0)],
        ];
        PlateMesh mesh = PlateMesh.Of(Rims.Heron, [Rims.HeronSoundhole], lines, 14);
        CheckTopology(mesh, holes: 1);
        Assert.InRange(mesh.SmallestAngleRad, 12 * Degree, 60 * Degree);
        double on = 0;
        double all = 0;
        foreach (Point[] line in lines)
        {
            for (int k = 0; k < 200; k++)
            {
                Point place = line[0].Towards(line[1], (k + 0.5) / 200);
                all++;
                on += mesh.Edges.Any(edge => LiesOn(mesh, edge, place, line)) ? 1 : 0;
            }
        }

        Assert.InRange(on / all, 0.85, 1);
    }

    [Fact]
    public void AnyEllipseWithAHoleAndBraces() =>
        Gen.Select(
                Gen.Double[60, 300],
                Gen.Double[0.4, 1],
                Gen.Double[0.15, 0.35],
                Gen.Double[0.15, 0.6],
                Gen.Double[0, Math.PI],
                Gen.Double[0.3, 1.5]
            )
            .Holds(
                (a, flat, radius, away, turn, coarse) =>
                {
                    double b = a * flat;
                    double hole = b * radius;
                    var middle = new Point(a * away * (1 - radius), 0);
                    Vector along = Vector.At(turn);
                    Point[][] lines =
                    [
                        [Point.Origin - (along * a), Point.Origin + (along * a)],
                        [new(-a / 3, -b / 2), new(-a / 4, b / 2)],
                        [new(-a / 3, b / 3), new(a / 3, b / 3), new(a / 2, 0)],
                    ];
                    PlateMesh mesh = PlateMesh.Of(
                        new Ellipse(a, b),
                        [Rims.Circle(hole, middle)],
                        lines,
                        coarse * hole
                    );
                    CheckTopology(mesh, holes: 1);
                    Assert.True(mesh.SmallestAngleRad > 3 * Degree);
                },
                iter: 60
            );

    [Fact]
    public void ManyPointsOnOneCircleOrLineDoNoHarm()
    {
        // Three points of a fan on a line, all of a circle, and a hole that is nothing but such points.
        PlateMesh mesh = PlateMesh.Of(Rims.Circle(100), [Rims.Circle(99.2)], [], 1.1);
        CheckTopology(mesh, holes: 1);
        CheckTopology(PlateMesh.Of(Rims.Rectangle(100, 2), [], [], 2.5), holes: 0);
    }

    [Fact]
    public void CornersStayCorners()
    {
        PlateMesh mesh = PlateMesh.Of(Rims.Rectangle(7, 3, 0.4), [], [], 0.8);
        foreach (Point corner in (Point[])[new(0, 0), new(7, 0), new(7, 3), new(0, 3)])
        {
            Point place = Point.Origin + (corner - Point.Origin).Turned(0.4);
            Assert.Contains(mesh.Points, point => point.DistanceTo(place) < 1e-9);
        }
    }

    [Fact]
    public void AHoleOutsideOrAcrossTheRimIsRefused()
    {
        Assert.Throws<ArgumentException>(() =>
            PlateMesh.Of(Rims.Circle(100), [Rims.Circle(30, new(90, 0))], [], 10)
        );
        Assert.Throws<ArgumentException>(() =>
            PlateMesh.Of(new Chain([EulerSegment.Line(default, new(1, 0))]), [], [], 10)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PlateMesh.Of(Rims.Circle(100), [], [], double.NaN)
        );
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void EitherDirectionOfARimWillDo(bool reversed)
    {
        Chain rim = reversed ? Rims.Heron.Reversed() : Rims.Heron;
        Chain hole = reversed ? Rims.HeronSoundhole.Reversed() : Rims.HeronSoundhole;
        CheckTopology(PlateMesh.Of(rim, [hole], [], 20), holes: 1);
    }

    [Fact]
    public void AskedForUnknownsComeOutNearly()
    {
        var plate = new Plate
        {
            Rim = Rims.Heron,
            Holes = [Rims.HeronSoundhole],
            Wood = Woods.Sitka,
            ThicknessMm = _ => 2.4,
        };
        foreach (int asked in (int[])[500, 5000, 20000])
        {
            Assert.InRange(PlateModel.Of(plate, asked).UnknownCount, 0.95 * asked, 1.05 * asked);
        }
    }

    [Fact]
    public void ANarrowPassageIsMeshedFiner()
    {
        // 3 mm between hole and rim, where 400 unknowns would ask for edges of 16 mm.
        var plate = new Plate
        {
            Rim = Rims.Circle(100),
            Holes = [Rims.Circle(40, new(57, 0))],
            Wood = Woods.Sitka,
            ThicknessMm = _ => 2.4,
        };
        PlateModel model = PlateModel.Of(plate, 400);
        CheckTopology(model.Mesh, holes: 1);
        Assert.Equal(Math.PI * ((100 * 100) - (40 * 40)), model.AreaMm2, 1e-5 * model.AreaMm2);
    }

    private static bool LiesOn(PlateMesh mesh, (int From, int To) edge, Point place, Point[] line)
    {
        Point from = mesh.Points[edge.From];
        Vector side = mesh.Points[edge.To] - from;
        double share = (place - from).Dot(side) / side.Dot(side);
        return share is >= 0 and <= 1
            && Math.Abs(side.Cross(place - from)) < 1e-6 * side.Length
            && Math.Abs(side.Cross(line[1] - line[0])) < 1e-6 * side.Length * 500;
    }

    /// <summary>Triangles fill the polygon of the rim once; every edge has two triangles or lies on the rim; all vertices are used.</summary>
    private static void CheckTopology(PlateMesh mesh, int holes)
    {
        var uses = new Dictionary<(int, int), int>();
        double area = 0;
        for (int t = 0; t < mesh.Triangles.Length; t += 3)
        {
            int[] corners = [.. mesh.Triangles.Skip(t).Take(3)];
            Point a = mesh.Points[corners[0]];
            double twice = (mesh.Points[corners[1]] - a).Cross(mesh.Points[corners[2]] - a);
            Assert.True(twice > 0);
            area += twice / 2;
            for (int k = 0; k < 3; k++)
            {
                (int, int) side = (corners[k], corners[(k + 1) % 3]);
                Assert.False(uses.ContainsKey(side));
                uses[side] = 1;
            }
        }

        double rimArea = 0;
        foreach (RimEdge edge in mesh.Rim)
        {
            Assert.True(uses.ContainsKey((edge.From, edge.To)));
            Assert.False(uses.ContainsKey((edge.To, edge.From)));
            rimArea +=
                (mesh.Points[edge.From] - Point.Origin).Cross(mesh.Points[edge.To] - Point.Origin)
                / 2;
        }

        Assert.Equal(rimArea, area, 1e-9 * area);
        int open = uses.Keys.Count(side => !uses.ContainsKey((side.Item2, side.Item1)));
        Assert.Equal(mesh.Rim.Length, open);
        Assert.Equal(mesh.Points.Length, mesh.Triangles.Distinct().Count());
        // Euler: V - E + F = 1 - holes.
        Assert.Equal(1 - holes, mesh.Points.Length - mesh.Edges.Length + mesh.TriangleCount);
    }
}

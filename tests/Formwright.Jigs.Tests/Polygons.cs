using Formwright.Curves;
using NetTopologySuite.Geometries;

namespace Formwright.Jigs.Tests;

/// <summary>Edges as polygons of an independent library (NetTopologySuite), flattened here and not by the code under test.</summary>
internal static class Polygons
{
    // A flat arc of half a degree departs from its chord by more than a judge may be off.
    private const double SagittaMm = 0.001;

    /// <summary>A closed path of arcs with points every half degree of turning, and closer where the chords would leave the arc by more than 0.001 mm.</summary>
    public static Polygon Of(ArcPath path)
    {
        List<Coordinate> ring = [];
        for (int i = 0; i < path.Vertices.Count; i++)
        {
            ArcVertex vertex = path.Vertices[i];
            Curves.Point a = vertex.Position;
            Curves.Point b = path.Vertices[(i + 1) % path.Vertices.Count].Position;
            ring.Add(new Coordinate(a.X, a.Y));
            double turning = 4 * Math.Atan(vertex.Bulge);
            if (turning == 0)
            {
                continue;
            }

            double chord = Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2));
            double radius = chord / (2 * Math.Sin(turning / 2));
            double heading = Math.Atan2(b.Y - a.Y, b.X - a.X) - (turning / 2);
            double cx = a.X - (radius * Math.Sin(heading));
            double cy = a.Y + (radius * Math.Cos(heading));
            double step = Math.Min(
                Math.PI / 360,
                2 * Math.Acos(Math.Max(0, 1 - (SagittaMm / Math.Abs(radius))))
            );
            int steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(turning) / step));
            for (int k = 1; k < steps; k++)
            {
                double at = heading + (turning * k / steps);
                ring.Add(
                    new Coordinate(cx + (radius * Math.Sin(at)), cy - (radius * Math.Cos(at)))
                );
            }
        }

        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }

    /// <summary>The outline in the workboard frame, from dense samples of the chain.</summary>
    public static Polygon Of(Outline outline, double joinMm)
    {
        Chain chain = outline.Closed;
        const int Count = 20000;
        List<Coordinate> ring = [];
        for (int i = 0; i < Count; i++)
        {
            Curves.Point place = chain.At(chain.LengthMm * i / Count).Position;
            ring.Add(new Coordinate(place.X + joinMm, -place.Y));
        }

        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }
}

using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>Moves of edges made of arcs.</summary>
public static class ArcPaths
{
    /// <summary>The same path run the other way.</summary>
    public static ArcPath Reversed(ArcPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        int count = path.Vertices.Count;
        ArcVertex[] reversed = new ArcVertex[count];
        for (int i = 0; i < count; i++)
        {
            int from = count - 1 - i;
            int bulgeFrom = from - 1;
            double bulge =
                bulgeFrom >= 0 ? -path.Vertices[bulgeFrom].Bulge
                : path.IsClosed ? -path.Vertices[^1].Bulge
                : 0;
            reversed[i] = new ArcVertex(path.Vertices[from].Position, bulge);
        }

        return path with
        {
            Vertices = reversed,
        };
    }

    /// <summary>The path mirrored in the centreline: a bass part becomes the treble part.</summary>
    public static ArcPath Mirrored(ArcPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path with
        {
            Vertices =
            [
                .. path.Vertices.Select(v => new ArcVertex(
                    new Point(v.Position.X, -v.Position.Y),
                    -v.Bulge
                )),
            ],
        };
    }

    /// <summary>The path moved along the centreline.</summary>
    public static ArcPath Moved(ArcPath path, double alongMm)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path with
        {
            Vertices =
            [
                .. path.Vertices.Select(v =>
                    v with
                    {
                        Position = new Point(v.Position.X + alongMm, v.Position.Y),
                    }
                ),
            ],
        };
    }

    /// <summary>Area within a closed path, exact for its arcs, mm² (always positive).</summary>
    public static double AreaMm2(ArcPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        double area = 0;
        for (int i = 0; i < path.Vertices.Count; i++)
        {
            ArcVertex vertex = path.Vertices[i];
            Point a = vertex.Position;
            Point b = path.Vertices[(i + 1) % path.Vertices.Count].Position;
            area += ((a.X * b.Y) - (b.X * a.Y)) / 2;
            double turning = 4 * Math.Atan(vertex.Bulge);
            if (turning != 0)
            {
                double radius = a.DistanceTo(b) / (2 * Math.Sin(turning / 2));
                area += radius * radius * (turning - Math.Sin(turning)) / 2;
            }
        }

        return Math.Abs(area);
    }
}

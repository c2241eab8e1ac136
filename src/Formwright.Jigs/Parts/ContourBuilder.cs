using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>Puts an edge together from pieces: straight lines, arcs, and curves given as arcs.</summary>
internal sealed class ContourBuilder
{
    private const double SamePlaceMm = 1e-6;
    private readonly List<ArcVertex> vertices = [];
    private double error;

    /// <summary>A straight line to a place (or the start).</summary>
    public ContourBuilder LineTo(Point place) => Add(place, 0);

    /// <summary>An arc to a place, given by its bulge tan(turning/4), left positive.</summary>
    public ContourBuilder ArcTo(Point place, double bulge)
    {
        if (vertices.Count > 0)
        {
            vertices[^1] = vertices[^1] with { Bulge = bulge };
        }

        return Add(place, 0);
    }

    /// <summary>A straight line to the start of a curve, then along it.</summary>
    public ContourBuilder Along(ArcPath path)
    {
        for (int i = 0; i < path.Vertices.Count; i++)
        {
            ArcVertex vertex = path.Vertices[i];
            Add(vertex.Position, i < path.Vertices.Count - 1 ? vertex.Bulge : 0);
        }

        error = Math.Max(error, path.ErrorMm);
        return this;
    }

    /// <summary>A straight line to the end of a curve, then back along it.</summary>
    public ContourBuilder Back(ArcPath path) => Along(ArcPaths.Reversed(path));

    /// <summary>The closed edge; a last straight line leads back to the start where that is another place.</summary>
    public ArcPath Close()
    {
        if (
            vertices.Count > 1
            && vertices[^1].Position.DistanceTo(vertices[0].Position) < SamePlaceMm
        )
        {
            vertices.RemoveAt(vertices.Count - 1);
        }

        return new ArcPath([.. vertices], true, error, 0);
    }

    private ContourBuilder Add(Point place, double bulge)
    {
        if (vertices.Count > 0 && vertices[^1].Position.DistanceTo(place) < SamePlaceMm)
        {
            vertices[^1] = new ArcVertex(vertices[^1].Position, bulge);
        }
        else
        {
            vertices.Add(new ArcVertex(place, bulge));
        }

        return this;
    }
}

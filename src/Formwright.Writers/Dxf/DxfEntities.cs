using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>The contours, holes and texts of a part as DXF entities.</summary>
internal static class DxfEntities
{
    // Ends nearer than this are the same vertex: far below what the file's eight decimals and any machine resolve.
    private const double SameMm = 1e-6;

    public static void Write(DxfText text, CutPart part)
    {
        foreach (CutContour contour in part.Contours)
        {
            string layer = CutLayers.NameOf(contour.Operation, contour.DepthMm);
            if (AsCircle(contour.Shape) is var (centre, radius))
            {
                Circle(text, layer, centre, radius);
            }
            else
            {
                Polyline(text, layer, contour.Shape);
            }
        }

        foreach (CutHole hole in part.Holes)
        {
            Circle(
                text,
                CutLayers.NameOf(CutOperation.Drill, hole.DepthMm),
                hole.Centre,
                hole.DiameterMm / 2
            );
        }

        foreach (CutText words in part.Texts)
        {
            DxfFrame.Entity(text, "TEXT", CutLayers.NameOf(CutOperation.Engrave), "AcDbText");
            text.AddPoint(10, words.At.X, words.At.Y).Add(40, words.HeightMm);
            text.Add(1, Ansi(words.Text)).Add(50, words.Degrees).Add(7, "Standard");
            text.Add(100, "AcDbText");
        }
    }

    private static void Circle(DxfText text, string layer, Point centre, double radius)
    {
        DxfFrame.Entity(text, "CIRCLE", layer, "AcDbCircle");
        text.AddPoint(10, centre.X, centre.Y).Add(40, radius);
    }

    private static void Polyline(DxfText text, string layer, Shape shape)
    {
        List<ArcVertex> vertices = Vertices(shape);
        DxfFrame.Entity(text, "LWPOLYLINE", layer, "AcDbPolyline");
        text.Add(90, vertices.Count).Add(70, shape.Closed ? 1 : 0).Add(43, 0.0);
        foreach (ArcVertex vertex in vertices)
        {
            text.Add(10, vertex.Position.X).Add(20, vertex.Position.Y);
            if (vertex.Bulge != 0)
            {
                text.Add(42, vertex.Bulge);
            }
        }
    }

    /// <summary>Vertices with the bulge of the piece after each; pieces of no length are left out, and a closed shape's last vertex when it meets the first.</summary>
    private static List<ArcVertex> Vertices(Shape shape)
    {
        List<ArcVertex> vertices = [];
        Point at = shape.Start;
        foreach (Segment segment in shape.Segments)
        {
            if (at.DistanceTo(segment.End) > SameMm)
            {
                double bulge = segment is ArcSegment arc ? arc.Bulge : 0;
                vertices.Add(new(at, Math.Abs(bulge) < 1e-8 ? 0 : bulge));
                at = segment.End;
            }
        }

        if (!shape.Closed || at.DistanceTo(shape.Start) > SameMm)
        {
            vertices.Add(new(at, 0));
        }

        return vertices;
    }

    /// <summary>Centre and radius of a closed shape of arcs about one centre that turn one way through a full turn.</summary>
    private static (Point Centre, double RadiusMm)? AsCircle(Shape shape)
    {
        if (!shape.Closed || shape.Segments.Any(s => s is not ArcSegment))
        {
            return null;
        }

        ArcGeometry? first = null;
        double turned = 0;
        Point at = shape.Start;
        foreach (ArcSegment arc in shape.Segments.Cast<ArcSegment>())
        {
            ArcGeometry geometry = ArcGeometry.Of(at, arc);
            first ??= geometry;
            if (
                geometry.IsStraight
                || first.Value.Centre.DistanceTo(geometry.Centre) > SameMm
                || Math.Abs(first.Value.RadiusMm - geometry.RadiusMm) > SameMm
            )
            {
                return null;
            }

            turned += geometry.SweepRad;
            at = arc.End;
        }

        return
            first is { } circle
            && at.DistanceTo(shape.Start) <= SameMm
            && Math.Abs(Math.Abs(turned) - (2 * Math.PI)) < 1e-9
            ? (circle.Centre, circle.RadiusMm)
            : null;
    }

    /// <summary>R2000 holds Windows-1252: other characters are written as \U+XXXX, and the file stays ASCII.</summary>
    private static string Ansi(string text) =>
        string.Concat(text.Select(c => c is >= ' ' and <= '~' ? c.ToString() : $"\\U+{(int)c:X4}"));
}

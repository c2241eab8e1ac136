using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Dxf;

/// <summary>Entities as pieces, in the drawing's own unit. Codes as in the DXF reference, section ENTITIES.</summary>
internal static class DxfEntities
{
    /// <summary>The pieces of an entity; null where it is none of the kinds that draw an outline.</summary>
    /// <exception cref="TraceFault">A spline's parts don't fit together.</exception>
    internal static List<Piece>? Of(DxfRecord entity, string file, out bool isClosed)
    {
        isClosed = false;
        switch (entity.Kind)
        {
            case "LINE":
                return [new LinePiece(entity.Place(), entity.Place(11))];
            case "CIRCLE":
                isClosed = true;
                return Seen(
                    entity,
                    [RoundPiece.OfCircle(entity.Place(), entity[40], 0, 2 * Math.PI)]
                );
            case "ARC":
                double from = entity[50] * Math.PI / 180;
                return Seen(
                    entity,
                    [
                        RoundPiece.OfCircle(
                            entity.Place(),
                            entity[40],
                            from,
                            Forward((entity[51] * Math.PI / 180) - from)
                        ),
                    ]
                );
            case "ELLIPSE":
                return [Ellipse(entity, out isClosed)];
            case "LWPOLYLINE":
                isClosed = (entity.Flags & 1) != 0;
                return Seen(entity, Light(entity, isClosed));
            case "POLYLINE":
                // 16 and 64: meshes, which draw no outline.
                if ((entity.Flags & (16 | 64)) != 0)
                {
                    return null;
                }

                isClosed = (entity.Flags & 1) != 0;
                return Seen(entity, Old(entity, isClosed));
            case "SPLINE":
                return [.. Spline(entity, file, out isClosed)];
            default:
                return null;
        }
    }

    private static double Forward(double sweep)
    {
        double turn = 2 * Math.PI;
        double left = sweep - (turn * Math.Floor(sweep / turn));
        return left <= 1e-12 ? turn : left;
    }

    private static RoundPiece Ellipse(DxfRecord entity, out bool isClosed)
    {
        Vector major = new(entity[11], entity[21]);
        // The minor axis is the extrusion crossed with the major one.
        double side = entity[230, 1] < 0 ? -1 : 1;
        double from = entity[41];
        double sweep = Forward(entity[42, 2 * Math.PI] - from);
        isClosed = sweep > (2 * Math.PI) - 1e-9;
        return new RoundPiece(entity.Place(), major, major.Left * (entity[40] * side), from, sweep);
    }

    private static List<Piece> Light(DxfRecord entity, bool isClosed)
    {
        List<(Point Place, double Bulge)> vertices = [];
        foreach ((int code, double value) in entity.Numbers)
        {
            if (code == 10)
            {
                vertices.Add((new(value, 0), 0));
            }
            else if (vertices.Count > 0 && code is 20 or 42)
            {
                (Point place, double bulge) = vertices[^1];
                vertices[^1] = code == 20 ? (place with { Y = value }, bulge) : (place, value);
            }
        }

        return Bulged(vertices, isClosed);
    }

    private static List<Piece> Old(DxfRecord entity, bool isClosed)
    {
        // 16: a spline's control point, whose curve the other vertices follow.
        List<(Point, double)> vertices =
        [
            .. entity
                .Parts.Where(vertex => (vertex.Flags & 16) == 0)
                .Select(vertex => (vertex.Place(), vertex[42])),
        ];
        return Bulged(vertices, isClosed);
    }

    private static List<Piece> Bulged(List<(Point Place, double Bulge)> vertices, bool isClosed)
    {
        List<Piece> pieces = [];
        int count = isClosed ? vertices.Count : vertices.Count - 1;
        for (int i = 0; i < count; i++)
        {
            Point next = vertices[(i + 1) % vertices.Count].Place;
            pieces.Add(RoundPiece.OfBulge(vertices[i].Place, next, vertices[i].Bulge));
        }

        return pieces;
    }

    private static IEnumerable<Piece> Spline(DxfRecord entity, string file, out bool isClosed)
    {
        isClosed = (entity.Flags & 1) != 0;
        List<Point> controls = entity.Places(10);
        List<double> knots = [.. entity.All(40)];
        if (controls.Count == 0)
        {
            // Only the points that it was drawn through; they are taken as they are.
            List<Point> fit = entity.Places(11);
            return fit.Count >= 2
                ? [new PointsPiece(isClosed && fit[0] != fit[^1] ? [.. fit, fit[0]] : fit)]
                : [];
        }

        List<double> weights = [.. entity.All(41)];
        if (weights.Count == 0)
        {
            weights = [.. Enumerable.Repeat(1.0, controls.Count)];
        }

        int degree = (int)Math.Clamp(entity[71, 3], 0, 100);
        if (!SplinePiece.AreConsistent(degree, controls.Count, weights, knots))
        {
            throw new TraceFault(file, entity.Line, 1, "fault.dxf-spline");
        }

        SplinePiece spline = new(degree, controls, weights, knots);
        isClosed =
            isClosed
            || spline.Start.DistanceTo(spline.End)
                <= 1e-9 * (1 + Math.Abs(spline.Start.X) + Math.Abs(spline.Start.Y));
        return [spline];
    }

    /// <summary>Entities with an extrusion of -z are drawn from behind: x is mirrored.</summary>
    private static List<Piece> Seen(DxfRecord entity, List<Piece> pieces) =>
        entity[230, 1] < 0 ? [.. pieces.Select(piece => piece.Under(Affine.Scale(-1, 1)))] : pieces;
}

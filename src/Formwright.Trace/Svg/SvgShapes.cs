using Formwright.Curves;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Svg;

/// <summary>The basic shapes of SVG as pieces, in user units.</summary>
internal static class SvgShapes
{
    /// <summary>The pieces of rect, circle, ellipse, line, polyline or polygon; null where a figure can't be read, empty where it draws nothing.</summary>
    /// <param name="node">The element.</param>
    /// <param name="view">Width and height that percentages refer to.</param>
    /// <param name="isClosed">Whether the shape is closed.</param>
    internal static List<Piece>? Of(SvgNode node, Vector view, out bool isClosed)
    {
        isClosed = node.Name is "rect" or "circle" or "ellipse" or "polygon";
        double diagonal = Math.Sqrt((view.X * view.X) + (view.Y * view.Y)) / Math.Sqrt(2);
        double X(string key) => Number(node, key, view.X);
        double Y(string key) => Number(node, key, view.Y);
        switch (node.Name)
        {
            case "circle":
                return Round(new(X("cx"), Y("cy")), Number(node, "r", diagonal), null);
            case "ellipse":
                return Round(new(X("cx"), Y("cy")), X("rx"), Y("ry"));
            case "line":
                Point from = new(X("x1"), Y("y1"));
                Point to = new(X("x2"), Y("y2"));
                return from.IsFinite && to.IsFinite ? [new LinePiece(from, to)] : null;
            case "rect":
                return Rectangle(node, view);
            default:
                return Row(node["points"] ?? "", isClosed);
        }
    }

    private static List<Piece>? Round(Point centre, double rx, double? ry) =>
        !centre.IsFinite || !double.IsFinite(rx) || ry is { } y && !double.IsFinite(y) ? null
        : rx <= 0 || ry <= 0 ? []
        : [new RoundPiece(centre, new Vector(rx, 0), new Vector(0, ry ?? rx), 0, 2 * Math.PI)];

    private static List<Piece>? Rectangle(SvgNode node, Vector view)
    {
        double x = Number(node, "x", view.X);
        double y = Number(node, "y", view.Y);
        double width = Number(node, "width", view.X);
        double height = Number(node, "height", view.Y);
        double rx = node["rx"] is null or "auto" ? double.NaN : Number(node, "rx", view.X);
        double ry = node["ry"] is null or "auto" ? double.NaN : Number(node, "ry", view.Y);
        if (!double.IsFinite(x + y + width + height))
        {
            return null;
        }

        if (width <= 0 || height <= 0)
        {
            return [];
        }

        // One radius alone serves for both (SVG 1.1 section 9.2).
        rx = Math.Clamp(
            double.IsFinite(rx) ? rx
                : double.IsFinite(ry) ? ry
                : 0,
            0,
            width / 2
        );
        ry = Math.Clamp(double.IsFinite(ry) ? ry : rx, 0, height / 2);
        List<Piece> pieces = [];
        Point[] corners =
        [
            new(x, y),
            new(x + width, y),
            new(x + width, y + height),
            new(x, y + height),
        ];
        for (int i = 0; i < 4; i++)
        {
            Point corner = corners[i];
            Point next = corners[(i + 1) % 4];
            Vector along = (next - corner) * (1 / corner.DistanceTo(next));
            Vector inset = new(along.X * rx, along.Y * ry);
            Vector turned = along.Left;
            Point from = corner + inset;
            Point to = next - inset;
            pieces.Add(new LinePiece(from, to));
            if (rx > 0 && ry > 0)
            {
                Vector down = new(turned.X * rx, turned.Y * ry);
                pieces.Add(new RoundPiece(to + down, -down, inset, 0, Math.PI / 2));
            }
        }

        return pieces;
    }

    private static List<Piece>? Row(string text, bool isClosed)
    {
        SvgNumbers at = new(text);
        List<Point> places = [];
        at.SkipSpace();
        while (!at.IsAtEnd)
        {
            if (!at.TryNumber(out double x) || !at.TryNumber(out double y))
            {
                return null;
            }

            places.Add(new(x, y));
            at.SkipSpace();
        }

        List<Piece> pieces = [];
        for (int i = 1; i < places.Count; i++)
        {
            pieces.Add(new LinePiece(places[i - 1], places[i]));
        }

        if (isClosed && places.Count > 2 && places[0] != places[^1])
        {
            pieces.Add(new LinePiece(places[^1], places[0]));
        }

        return pieces;
    }

    private static double Number(SvgNode node, string key, double whole) =>
        node[key] is { } text ? SvgLength.Read(text)?.Px(whole) ?? double.NaN : 0;
}

using Formwright.Curves;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Svg;

/// <summary>An elliptical arc given by its end points, as SVG writes it.</summary>
internal static class SvgArc
{
    /// <summary>The arc as a piece; a straight one where a radius is 0.</summary>
    /// <remarks>SVG 1.1, appendix F.6.5 (centre from end points) and F.6.6 (radii that are too small are enlarged).</remarks>
    internal static Piece Of(
        Point from,
        Point to,
        double rx,
        double ry,
        double turn,
        bool isLarge,
        bool isPositive
    )
    {
        rx = Math.Abs(rx);
        ry = Math.Abs(ry);
        if (rx == 0 || ry == 0)
        {
            return new LinePiece(from, to);
        }

        Vector half = ((from - to) * 0.5).Turned(-turn);
        double over = (half.X * half.X / (rx * rx)) + (half.Y * half.Y / (ry * ry));
        if (over > 1)
        {
            (rx, ry) = (rx * Math.Sqrt(over), ry * Math.Sqrt(over));
            over = 1;
        }

        double root = Math.Sqrt(Math.Max(0, (1 / over) - 1)) * (isLarge == isPositive ? -1 : 1);
        Vector centre = new(root * rx * half.Y / ry, -root * ry * half.X / rx);
        double first = Math.Atan2((half.Y - centre.Y) / ry, (half.X - centre.X) / rx);
        double last = Math.Atan2((-half.Y - centre.Y) / ry, (-half.X - centre.X) / rx);
        double sweep = last - first;
        if (isPositive && sweep <= 0)
        {
            sweep += 2 * Math.PI;
        }
        else if (!isPositive && sweep >= 0)
        {
            sweep -= 2 * Math.PI;
        }

        return new RoundPiece(
            from.Towards(to, 0.5) + centre.Turned(turn),
            new Vector(rx, 0).Turned(turn),
            new Vector(0, ry).Turned(turn),
            first,
            sweep
        );
    }
}

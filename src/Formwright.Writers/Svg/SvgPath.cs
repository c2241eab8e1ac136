using System.Text;
using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>Path data of SVG: y downwards, mm to a thousandth.</summary>
internal static class SvgPath
{
    public static void Append(StringBuilder data, Shape shape, Box window)
    {
        Point at = shape.Start;
        data.Append('M');
        AppendPoint(data, at, window);
        foreach (Segment segment in shape.Segments)
        {
            switch (segment)
            {
                case ArcSegment arc when Math.Abs(arc.Bulge) >= ArcGeometry.Flattest:
                    ArcGeometry geometry = ArcGeometry.Of(at, arc);
                    data.Append('A')
                        .AppendMm(geometry.RadiusMm)
                        .Append(' ')
                        .AppendMm(geometry.RadiusMm)
                        .Append(Math.Abs(arc.Bulge) > 1 ? " 0 1 " : " 0 0 ")
                        // Left on the sheet is against the clock, which SVG calls sweep 0.
                        .Append(arc.Bulge > 0 ? "0 " : "1 ");
                    break;
                case CubicSegment cubic:
                    data.Append('C');
                    AppendPoint(data, cubic.Control1, window);
                    data.Append(' ');
                    AppendPoint(data, cubic.Control2, window);
                    data.Append(' ');
                    break;
                default:
                    data.Append('L');
                    break;
            }

            AppendPoint(data, segment.End, window);
            at = segment.End;
        }

        if (shape.Closed)
        {
            data.Append('Z');
        }
    }

    private static void AppendPoint(StringBuilder data, Point p, Box window) =>
        data.AppendMm(p.X - window.LeftMm).Append(' ').AppendMm(window.TopMm - p.Y);
}

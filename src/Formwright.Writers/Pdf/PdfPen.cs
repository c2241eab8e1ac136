using Formwright.Curves;
using Formwright.Drawing;
using PdfSharp.Drawing;

namespace Formwright.Writers;

/// <summary>Puts marks on a PDF page or form that shows a window of them; coordinates become points, y downwards.</summary>
internal sealed class PdfPen(XGraphics graphics, Box window)
{
    private readonly Dictionary<LineStyle, XPen> pens = [];
    private readonly Dictionary<(Weight, double), XFont> fonts = [];
    private readonly Dictionary<Tone, XBrush> brushes = [];

    public void Draw(IEnumerable<Mark> marks)
    {
        foreach (Mark mark in marks)
        {
            switch (mark)
            {
                case StrokeMark stroke:
                    XGraphicsPath line = new();
                    Add(line, stroke.Shape);
                    graphics.DrawPath(Pen(stroke.Style), line);
                    break;
                case FillMark fill:
                    XGraphicsPath area = new() { FillMode = XFillMode.Alternate };
                    foreach (Shape loop in fill.Loops)
                    {
                        Add(area, loop);
                    }

                    graphics.DrawPath(Brush(fill.Tone), area);
                    break;
                case TextMark text:
                    Letter(text);
                    break;
            }
        }
    }

    private static double Pt(double mm) => mm * PdfWriter.PointsPerMm;

    private XPoint At(Point p) => new(Pt(p.X - window.LeftMm), Pt(window.TopMm - p.Y));

    private void Letter(TextMark text)
    {
        XFont font = Font(text.Style);
        XPoint at = At(text.Start);
        if (text.AngleRad == 0)
        {
            graphics.DrawString(text.Text, font, Brush(text.Style.Tone), at);
            return;
        }

        XGraphicsState state = graphics.Save();
        graphics.RotateAtTransform(-text.AngleRad * 180 / Math.PI, at);
        graphics.DrawString(text.Text, font, Brush(text.Style.Tone), at);
        graphics.Restore(state);
    }

    private void Add(XGraphicsPath path, Shape shape)
    {
        path.StartFigure();
        Point at = shape.Start;
        foreach (Segment segment in shape.Segments)
        {
            switch (segment)
            {
                case ArcSegment arc:
                    Point from = at;
                    foreach (CubicSegment c in ArcGeometry.Of(at, arc).Cubics())
                    {
                        path.AddBezier(At(from), At(c.Control1), At(c.Control2), At(c.End));
                        from = c.End;
                    }

                    break;
                case CubicSegment c:
                    path.AddBezier(At(at), At(c.Control1), At(c.Control2), At(c.End));
                    break;
                default:
                    path.AddLine(At(at), At(segment.End));
                    break;
            }

            at = segment.End;
        }

        if (shape.Closed)
        {
            path.CloseFigure();
        }
    }

    private XPen Pen(LineStyle style)
    {
        if (!pens.TryGetValue(style, out XPen? pen))
        {
            double width = Pt(style.WidthMm);
            pen = new XPen(Colour(style.Tone), width)
            {
                LineJoin = XLineJoin.Round,
                LineCap = style.Dash.Count > 0 ? XLineCap.Flat : XLineCap.Round,
            };
            if (style.Dash.Count > 0)
            {
                // PDFsharp counts dashes in line widths.
                pen.DashPattern = [.. style.Dash.Select(d => d / style.WidthMm)];
            }

            pens[style] = pen;
        }

        return pen;
    }

    private XFont Font(TextStyle style)
    {
        (Weight, double) key = (style.Weight, style.HeightMm);
        if (!fonts.TryGetValue(key, out XFont? font))
        {
            fonts[key] = font = PdfFonts.Font(style.Weight, style.HeightMm);
        }

        return font;
    }

    private XBrush Brush(Tone tone)
    {
        if (!brushes.TryGetValue(tone, out XBrush? brush))
        {
            brushes[tone] = brush = new XSolidBrush(Colour(tone));
        }

        return brush;
    }

    private static XColor Colour(Tone tone) => XColor.FromGrayScale(Palette.Grey(tone) / 255.0);
}

using Formwright.Curves;
using Formwright.Drawing;
using SkiaSharp;

namespace Formwright.Writers;

/// <summary>Puts marks on a Skia canvas; coordinates become pixels, y downwards.</summary>
internal sealed class SkiaPen(SKCanvas canvas, double heightMm, double pxPerMm) : IDisposable
{
    // Thinner lines would vanish in a small picture.
    private const float ThinnestPx = 0.7f;
    private readonly Dictionary<LineStyle, SKPaint> pens = [];
    private readonly Dictionary<Tone, SKPaint> brushes = [];
    private readonly Dictionary<(Weight, double), SKFont> fonts = [];

    public void Draw(IEnumerable<Mark> marks)
    {
        foreach (Mark mark in marks)
        {
            switch (mark)
            {
                case StrokeMark stroke:
                    using (SKPath line = Path([stroke.Shape]))
                    {
                        canvas.DrawPath(line, Pen(stroke.Style));
                    }

                    break;
                case FillMark fill:
                    using (SKPath area = Path(fill.Loops))
                    {
                        canvas.DrawPath(area, Brush(fill.Tone));
                    }

                    break;
                case TextMark text:
                    Letter(text);
                    break;
            }
        }
    }

    public void Dispose()
    {
        foreach (
            IDisposable thing in pens
                .Values.Cast<IDisposable>()
                .Concat(brushes.Values)
                .Concat(fonts.Values)
        )
        {
            thing.Dispose();
        }
    }

    private float Px(double mm) => (float)(mm * pxPerMm);

    private SKPoint At(Point p) => new(Px(p.X), Px(heightMm - p.Y));

    private void Letter(TextMark text)
    {
        (Weight, double) key = (text.Style.Weight, text.Style.HeightMm);
        if (!fonts.TryGetValue(key, out SKFont? font))
        {
            double em = Typeface.Of(text.Style.Weight).EmMm(text.Style.HeightMm);
            fonts[key] = font = Skia.Font(text.Style.Weight, Px(em));
        }

        SKPoint at = At(text.Start);
        SKPaint brush = Brush(text.Style.Tone);
        if (text.AngleRad == 0)
        {
            canvas.DrawText(text.Text, at, SKTextAlign.Left, font, brush);
            return;
        }

        canvas.Save();
        canvas.RotateDegrees((float)(-text.AngleRad * 180 / Math.PI), at.X, at.Y);
        canvas.DrawText(text.Text, at, SKTextAlign.Left, font, brush);
        canvas.Restore();
    }

    private SKPath Path(IReadOnlyList<Shape> shapes)
    {
        using SKPathBuilder path = new() { FillType = SKPathFillType.EvenOdd };
        foreach (Shape shape in shapes)
        {
            path.MoveTo(At(shape.Start));
            Point from = shape.Start;
            foreach (Segment segment in shape.Segments)
            {
                switch (segment)
                {
                    case ArcSegment arc:
                        foreach (CubicSegment c in ArcGeometry.Of(from, arc).Cubics())
                        {
                            path.CubicTo(At(c.Control1), At(c.Control2), At(c.End));
                        }

                        break;
                    case CubicSegment c:
                        path.CubicTo(At(c.Control1), At(c.Control2), At(c.End));
                        break;
                    default:
                        path.LineTo(At(segment.End));
                        break;
                }

                from = segment.End;
            }

            if (shape.Closed)
            {
                path.Close();
            }
        }

        return path.Detach();
    }

    private SKPaint Pen(LineStyle style)
    {
        if (!pens.TryGetValue(style, out SKPaint? pen))
        {
            pens[style] = pen = new SKPaint
            {
                IsAntialias = true,
                Style = SKPaintStyle.Stroke,
                StrokeWidth = Math.Max(ThinnestPx, Px(style.WidthMm)),
                StrokeJoin = SKStrokeJoin.Round,
                StrokeCap = style.Dash.Count > 0 ? SKStrokeCap.Butt : SKStrokeCap.Round,
                Color = Colour(style.Tone),
            };
            if (style.Dash.Count > 0)
            {
                pen.PathEffect = SKPathEffect.CreateDash([.. style.Dash.Select(Px)], 0);
            }
        }

        return pen;
    }

    private SKPaint Brush(Tone tone)
    {
        if (!brushes.TryGetValue(tone, out SKPaint? brush))
        {
            brushes[tone] = brush = new SKPaint { IsAntialias = true, Color = Colour(tone) };
        }

        return brush;
    }

    private static SKColor Colour(Tone tone)
    {
        byte grey = Palette.Grey(tone);
        return new SKColor(grey, grey, grey);
    }
}

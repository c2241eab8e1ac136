using Formwright.Curves;

namespace Formwright.Plates.Tests.Plates;

/// <summary>An exact ellipse of semi-axes a and b, turned, by its angle: a curve whose parameter is not the arc length.</summary>
internal sealed class Ellipse(double a, double b, double turn = 0) : ICurve
{
    public bool IsClosed => true;

    public int SpanCount => 4;

    public double LengthMm => 4 * SpanLengthMm(0, 0, Math.PI / 2);

    public double SpanEnd(int span) => Math.PI / 2;

    public CurvePoint At(int span, double t)
    {
        (double s, double c) = Math.SinCos(t + (span * Math.PI / 2));
        double speed = Math.Sqrt((a * a * s * s) + (b * b * c * c));
        return new(
            Point.Origin + new Vector(a * c, b * s).Turned(turn),
            Math.Atan2(b * c, -a * s) + turn,
            a * b / (speed * speed * speed)
        );
    }

    public double SpanLengthMm(int span, double from, double to)
    {
        const int steps = 400;
        double length = 0;
        for (int i = 0; i < steps; i++)
        {
            double t = from + ((to - from) * (i + 0.5) / steps) + (span * Math.PI / 2);
            (double s, double c) = Math.SinCos(t);
            length += Math.Sqrt((a * a * s * s) + (b * b * c * c)) * (to - from) / steps;
        }

        return length;
    }
}

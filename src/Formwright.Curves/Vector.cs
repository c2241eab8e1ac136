namespace Formwright.Curves;

/// <summary>A step in a plane, mm; or a direction, when its length is 1.</summary>
public readonly record struct Vector(double X, double Y)
{
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y);

    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y);

    public static Vector operator -(Vector a) => new(-a.X, -a.Y);

    public static Vector operator *(Vector a, double factor) => new(a.X * factor, a.Y * factor);

    public static Vector operator *(double factor, Vector a) => a * factor;

    /// <summary>The direction at an angle (rad, from +x towards +y).</summary>
    public static Vector At(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new(cos, sin);
    }

    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Angle from +x towards +y, rad, in (-π, π].</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>A quarter turn to the left (from +x towards +y).</summary>
    public Vector Left => new(-Y, X);

    public double Dot(Vector other) => (X * other.X) + (Y * other.Y);

    /// <summary>Positive when <paramref name="other"/> points to the left of this.</summary>
    public double Cross(Vector other) => (X * other.Y) - (Y * other.X);

    /// <summary>Turned by an angle, rad, left positive.</summary>
    public Vector Turned(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new((X * cos) - (Y * sin), (X * sin) + (Y * cos));
    }

    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");
}

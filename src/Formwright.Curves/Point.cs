namespace Formwright.Curves;

/// <summary>A place in a plane, mm.</summary>
public readonly record struct Point(double X, double Y)
{
    public static readonly Point Origin;

    public static Point operator +(Point place, Vector step) =>
        new(place.X + step.X, place.Y + step.Y);

    public static Point operator -(Point place, Vector step) =>
        new(place.X - step.X, place.Y - step.Y);

    public static Vector operator -(Point to, Point from) => new(to.X - from.X, to.Y - from.Y);

    /// <summary>Distance between two places, mm.</summary>
    public double DistanceTo(Point other) => (other - this).Length;

    /// <summary>The place that is <paramref name="share"/> of the way to another (0 here, 1 there).</summary>
    public Point Towards(Point other, double share) => this + ((other - this) * share);

    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);

    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");
}

namespace Formwright.Curves;

/// <summary>Smallest upright rectangle around something, mm.</summary>
public readonly record struct Box(Point Min, Point Max)
{
    /// <summary>The box of nothing: any other absorbs it.</summary>
    public static readonly Box Empty = new(
        new(double.PositiveInfinity, double.PositiveInfinity),
        new(double.NegativeInfinity, double.NegativeInfinity)
    );

    public double WidthMm => Max.X - Min.X;

    public double HeightMm => Max.Y - Min.Y;

    public Point Centre => Min.Towards(Max, 0.5);

    public Box With(Point place) =>
        new(
            new(Math.Min(Min.X, place.X), Math.Min(Min.Y, place.Y)),
            new(Math.Max(Max.X, place.X), Math.Max(Max.Y, place.Y))
        );

    public Box With(Box other) => With(other.Min).With(other.Max);

    public Box Grown(double marginMm) =>
        new(Min - new Vector(marginMm, marginMm), Max + new Vector(marginMm, marginMm));

    public bool Contains(Point place) =>
        place.X >= Min.X && place.X <= Max.X && place.Y >= Min.Y && place.Y <= Max.Y;

    /// <summary>Distance from a place to the box, mm; 0 inside.</summary>
    public double DistanceTo(Point place)
    {
        double dx = Math.Max(0, Math.Max(Min.X - place.X, place.X - Max.X));
        double dy = Math.Max(0, Math.Max(Min.Y - place.Y, place.Y - Max.Y));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}

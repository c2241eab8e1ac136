using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>A row of measured or drawn points; the way between two of them is not known unless it is long (see <see cref="LinePiece"/>).</summary>
public sealed record PointsPiece : Piece
{
    private readonly Point[] places;

    /// <param name="places">Two or more.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    public PointsPiece(IEnumerable<Point> places)
    {
        this.places = [.. places];
        if (this.places.Length < 2)
        {
            throw new ArgumentException("Two points are needed.", nameof(places));
        }
    }

    public ReadOnlySpan<Point> Places => places;

    public override bool IsFinite => places.All(place => place.IsFinite);

    internal override bool IsWithin(double limit) =>
        Array.TrueForAll(places, place => IsWithin(place, limit));

    internal override int FirstSteps => places.Length - 1;

    public override Point At(double t)
    {
        double at = t * (places.Length - 1);
        int i = Math.Clamp((int)at, 0, places.Length - 2);
        return places[i].Towards(places[i + 1], at - i);
    }

    public override Piece Under(Affine map) => new PointsPiece(places.Select(map.Of));

    public override Piece Reversed() => new PointsPiece(places.Reverse());
}

using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>A piece of a drawn curve, as its file gives it; places are functions of t from 0 to 1.</summary>
public abstract record Piece
{
    /// <summary>The place at t, 0 to 1.</summary>
    public abstract Point At(double t);

    /// <summary>The piece as an affine map leaves it.</summary>
    public abstract Piece Under(Affine map);

    /// <summary>The same piece from its end to its start.</summary>
    public abstract Piece Reversed();

    /// <summary>Whether all its figures are finite.</summary>
    public abstract bool IsFinite { get; }

    /// <summary>Into how many even steps of t sampling starts to divide it; 1 for a straight piece.</summary>
    internal abstract int FirstSteps { get; }

    /// <summary>Whether its places lie within a limit, as far as nine of them tell.</summary>
    internal virtual bool IsWithin(double limit)
    {
        for (int i = 0; i <= 8; i++)
        {
            if (!IsWithin(At(i / 8.0), limit))
            {
                return false;
            }
        }

        return true;
    }

    private protected static bool IsWithin(Point place, double limit) =>
        Math.Abs(place.X) <= limit && Math.Abs(place.Y) <= limit;

    public Point Start => At(0);

    public Point End => At(1);
}

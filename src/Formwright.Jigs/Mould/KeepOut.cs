using Formwright.Curves;

namespace Formwright.Jigs.Mould;

/// <summary>A piece under the board that no dowel or bolt may come through: spine, foot.</summary>
/// <param name="Key">What it is among the words: <c>keep-out.spine</c>.</param>
/// <param name="Area">Where it is, workboard frame, mm.</param>
public sealed record KeepOut(string Key, Box Area)
{
    /// <summary>Its name in the reader's language.</summary>
    public string Name => JigsWords.Of[$"keep-out.{Key}"];

    /// <summary>Distance of a place from it, mm; 0 inside.</summary>
    public double DistanceMm(Point place)
    {
        double x = Math.Max(0, Math.Max(Area.Min.X - place.X, place.X - Area.Max.X));
        double y = Math.Max(0, Math.Max(Area.Min.Y - place.Y, place.Y - Area.Max.Y));
        return Math.Sqrt((x * x) + (y * y));
    }
}

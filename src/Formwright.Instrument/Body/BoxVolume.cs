using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Instrument.Body;

/// <summary>Volume of the box.</summary>
public static class BoxVolume
{
    private static readonly (double Place, double Weight)[] Gauss =
    [
        (-0.9061798459386640, 0.2369268850561891),
        (-0.5384693101056831, 0.4786286704993665),
        (0, 0.5688888888888889),
        (0.5384693101056831, 0.4786286704993665),
        (0.9061798459386640, 0.2369268850561891),
    ];

    /// <summary>
    /// Volume between soundboard and back inside the ribs, litres, by Green's theorem: twice ∫ F du along the inner face of the treble rib,
    /// F(u, y) being the integral of the depth from the centreline to it. Gauss-Legendre of five points in pieces of at most 10 mm along and
    /// quarters across; what is left is the crease of a dome at its rim (under 1e-4).
    /// </summary>
    /// <param name="outline">The outline; the ribs stand inside it.</param>
    /// <param name="depth">Depth of the back under the soundboard at the rim, mm.</param>
    /// <param name="dome">Height of the soundboard over the rim, mm.</param>
    /// <param name="ribMm">Thickness of the ribs, mm.</param>
    public static double Litres(
        Outline outline,
        IHeightField depth,
        IHeightField dome,
        double ribMm
    )
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(depth);
        ArgumentNullException.ThrowIfNull(dome);
        double sum = 0;
        foreach (EulerSegment segment in outline.Half.Segments)
        {
            int pieces = (int)Math.Ceiling(segment.LengthMm / 10);
            double piece = segment.LengthMm / pieces;
            for (int i = 0; i < pieces; i++)
            {
                foreach ((double t, double weight) in Gauss)
                {
                    CurvePoint at = segment.At(piece * (i + ((1 + t) / 2)));
                    // Heel to tail, inside to the right: du/ds = (1 + κ t) cos θ along the offset.
                    double du = (1 + (at.Curvature * ribMm)) * Math.Cos(at.Angle);
                    Point inner = at.Position - (at.Normal * ribMm);
                    sum += weight * piece / 2 * du * Across(inner, depth, dome);
                }
            }
        }

        return 2 * sum * 1e-6;
    }

    private static double Across(Point inner, IHeightField depth, IHeightField dome)
    {
        const int Pieces = 4;
        double sum = 0;
        for (int piece = 0; piece < Pieces; piece++)
        {
            foreach ((double t, double weight) in Gauss)
            {
                Point place = new(inner.X, inner.Y * (piece + ((1 + t) / 2)) / Pieces);
                sum += weight * (depth.HeightAt(place) + dome.HeightAt(place));
            }
        }

        return sum * inner.Y / (2 * Pieces);
    }
}

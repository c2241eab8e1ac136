using Formwright.Curves.Offsetting;

namespace Formwright.Curves;

/// <summary>
/// Checks an offset against its source by brute force: places all along the one against places all along the other, nothing shared with
/// the code that made it.
/// </summary>
public static class OffsetValidator
{
    /// <summary>Checks exact offset paths.</summary>
    /// <param name="source">The chain.</param>
    /// <param name="distanceMm">Offset, left positive, mm.</param>
    /// <param name="paths">What is checked: whole, all paths of the offset.</param>
    /// <param name="spacingMm">Distance between measured places along both, mm.</param>
    public static OffsetAudit Check(
        Chain source,
        double distanceMm,
        IReadOnlyList<OffsetPath> paths,
        double spacingMm = 1
    )
    {
        ArgumentNullException.ThrowIfNull(paths);
        Guard.Positive(spacingMm);
        return new BruteForce(source, distanceMm, spacingMm).Audit([.. paths.Select(Places)]);

        List<Point> Places(OffsetPath path)
        {
            List<Point> places = [];
            for (int i = 0; i < path.SpanCount; i++)
            {
                double end = path.SpanEnd(i);
                int parts = Parts(path.SpanLengthMm(i, 0, end), spacingMm);
                for (int k = 0; k <= parts; k++)
                {
                    places.Add(path.At(i, end * k / parts).Position);
                }
            }

            return places;
        }
    }

    /// <summary>Checks offsets that were converted to arcs; what the conversion adds is part of what is found.</summary>
    /// <inheritdoc cref="Check(Chain, double, IReadOnlyList{OffsetPath}, double)"/>
    public static OffsetAudit Check(
        Chain source,
        double distanceMm,
        IReadOnlyList<ArcPath> paths,
        double spacingMm = 1
    )
    {
        ArgumentNullException.ThrowIfNull(paths);
        Guard.Positive(spacingMm);
        return new BruteForce(source, distanceMm, spacingMm).Audit([.. paths.Select(Places)]);

        List<Point> Places(ArcPath path)
        {
            List<Point> places = [];
            foreach (ArcPiece piece in path.Pieces)
            {
                int parts = Parts(piece.LengthMm, spacingMm);
                for (int k = 0; k <= parts; k++)
                {
                    places.Add(piece.At((double)k / parts));
                }
            }

            return places;
        }
    }

    private static int Parts(double length, double spacing) =>
        (int)Math.Clamp(Math.Ceiling(length / spacing), 2, 1_000_000);
}

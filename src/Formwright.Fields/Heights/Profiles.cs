using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>Sections of a field: the centreline, a section across, the gauge of a brace.</summary>
public static class Profiles
{
    private const int MostPoints = 1_000_000;

    /// <summary>The field along a straight line, both ends included, at even distances.</summary>
    /// <param name="field">The field; where the line leaves it, height, slope and curvature are 0.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    /// <param name="spacingMm">Largest distance between two points, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An end is not finite, the ends coincide, or the spacing is not positive or asks for more than a million points.
    /// </exception>
    public static IReadOnlyList<ProfilePoint> Along(
        IHeightField field,
        Point from,
        Point to,
        double spacingMm
    )
    {
        ArgumentNullException.ThrowIfNull(field);
        double length = from.DistanceTo(to);
        if (!(double.IsFinite(length) && length > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(to),
                to,
                "Two different, finite ends are needed."
            );
        }
        if (!(double.IsFinite(spacingMm) && spacingMm > 0 && length / spacingMm < MostPoints))
        {
            throw new ArgumentOutOfRangeException(
                nameof(spacingMm),
                spacingMm,
                "A spacing above 0 that is not too fine for the line is needed."
            );
        }
        Vector direction = (to - from) * (1 / length);
        int pieces = (int)Math.Ceiling(length / spacingMm);
        var points = new ProfilePoint[pieces + 1];
        for (int i = 0; i <= pieces; i++)
        {
            double share = (double)i / pieces;
            Point place = from.Towards(to, share);
            HeightSample sample = field.At(place);
            points[i] = new(
                share * length,
                place,
                sample.HeightMm,
                sample.SlopeAlong(direction),
                sample.SectionCurvature(direction)
            );
        }
        return points;
    }
}

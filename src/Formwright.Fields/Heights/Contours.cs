using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// Lines of equal height of any field: marching squares (Lorensen &amp; Cline 1987, in the plane) find and join them, then
/// every point is put on the height by root finding and pieces that are too straight are divided.
/// </summary>
public static class Contours
{
    private const int CellsAcross = 96;

    /// <summary>The lines at the given heights, in their order; none where the field does not reach a height.</summary>
    /// <param name="field">The field.</param>
    /// <param name="heightsMm">Heights, mm.</param>
    /// <param name="toleranceMm">How far a polyline may leave the true line, mm; each line states what it achieved.</param>
    /// <param name="stepMm">
    /// Step of the search, mm: summits and hollows smaller than this may be missed. 0 takes a 96th of the region's smaller width.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite, or tolerance or step is out of its range.</exception>
    public static IReadOnlyList<Contour> Of(
        IHeightField field,
        IReadOnlyList<double> heightsMm,
        double toleranceMm,
        double stepMm = 0
    )
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(heightsMm);
        if (!(double.IsFinite(toleranceMm) && toleranceMm > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(toleranceMm),
                toleranceMm,
                "A tolerance above 0 is needed."
            );
        }
        Box bounds = field.Region.Bounds;
        double step =
            stepMm == 0 ? Math.Min(bounds.WidthMm, bounds.HeightMm) / CellsAcross : stepMm;
        if (
            !(step > 0)
            || ((bounds.WidthMm / step) + 4) * ((bounds.HeightMm / step) + 4) > Membrane.MostNodes
        )
        {
            throw new ArgumentOutOfRangeException(
                nameof(stepMm),
                stepMm,
                "A step above 0 that is not too fine for the region is needed."
            );
        }
        var search = new ContourSearch(field, step);
        var found = new List<Contour>();
        foreach (double height in heightsMm)
        {
            if (!double.IsFinite(height))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(heightsMm),
                    height,
                    "A finite height is needed."
                );
            }
            var line = new ContourLine(field, height, toleranceMm, step);
            foreach (List<(Point A, Point B)> loop in search.Loops(height))
            {
                found.AddRange(line.Through(loop));
            }
        }
        return found;
    }
}

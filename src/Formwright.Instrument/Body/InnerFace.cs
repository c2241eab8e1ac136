using Formwright.Curves;

namespace Formwright.Instrument.Body;

/// <summary>Where things meet the inside of the ribs. The outline is the ribs' outer face.</summary>
public static class InnerFace
{
    /// <summary>How much width a layer along the outline takes at a station, measured across, mm: the inner face is found as the exact offset.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="uMm">Station, mm.</param>
    /// <param name="depthMm">Distance from the outer face, square to it, mm.</param>
    public static double RibAcross(Outline outline, double uMm, double depthMm)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double outer = outline.WidthAt(uMm) / 2;
        double inner = HalfWidth(outline, uMm, depthMm);
        return outer - inner;
    }

    /// <summary>Half the width at a station between faces that lie inside the outline by a distance, mm; 0 where nothing is left.</summary>
    public static double HalfWidth(Outline outline, double uMm, double depthMm)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double low = 0;
        double high = outline.WidthAt(uMm) / 2;
        if (high <= 0 || !(outline.Half.Nearest(new Point(uMm, 0)).DistanceMm > depthMm))
        {
            return 0;
        }

        // The distance from the outline falls towards it along the last stretch; bisect to 1e-9 mm.
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) =
                outline.Half.Nearest(new Point(uMm, middle)).DistanceMm > depthMm
                    ? (middle, high)
                    : (low, middle);
        }

        return low;
    }
}

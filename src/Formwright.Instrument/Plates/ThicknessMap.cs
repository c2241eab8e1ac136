using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Plates;

/// <summary>
/// Thickness of the soundboard anywhere, body frame: that of the edge on the outline, over the band a smooth step (s = 3q² - 2q³ of the
/// share q of the band) up to that of the middle, level from there on.
/// </summary>
public sealed class ThicknessMap
{
    // Tuned: the distance from the outline is sampled at this step and taken as linear between; on a curve of radius R it misses by h²/8R.
    private const double StepMm = 6;

    private readonly Outline outline;
    private readonly Lazy<double[,]> distances;

    /// <param name="soundboard">Its thicknesses.</param>
    /// <param name="outline">The outline.</param>
    public ThicknessMap(SoundboardDesign soundboard, Outline outline)
    {
        ArgumentNullException.ThrowIfNull(soundboard);
        ArgumentNullException.ThrowIfNull(outline);
        this.outline = outline;
        MiddleMm = soundboard.ThicknessMm;
        EdgeMm = soundboard.EdgeThicknessMm;
        BandMm = soundboard.EdgeBandMm;
        distances = new(Sampled);
    }

    /// <summary>Thickness in the middle, mm.</summary>
    public double MiddleMm { get; }

    /// <summary>Thickness at the edge, mm.</summary>
    public double EdgeMm { get; }

    /// <summary>Width of the band between, mm.</summary>
    public double BandMm { get; }

    /// <summary>Whether it is the same all over.</summary>
    public bool IsEven => MiddleMm == EdgeMm;

    /// <summary>Thickness at a place, mm; beyond the outline that of the edge.</summary>
    public double At(Point place)
    {
        if (IsEven)
        {
            return MiddleMm;
        }

        return BandMm == 0 ? MiddleMm : Over(Distance(place));
    }

    /// <summary>Thickness at a distance from the outline, mm.</summary>
    public double Over(double fromOutlineMm)
    {
        double q = BandMm == 0 ? 1 : Math.Clamp(fromOutlineMm / BandMm, 0, 1);
        return EdgeMm + ((MiddleMm - EdgeMm) * q * q * (3 - (2 * q)));
    }

    /// <summary>Distance from the outline at which the board has a thickness between both, mm; null where it never has.</summary>
    public double? DistanceOf(double thicknessMm)
    {
        double share = (thicknessMm - EdgeMm) / (MiddleMm - EdgeMm);
        if (!(share is >= 0 and <= 1))
        {
            return null;
        }

        // q²(3 - 2q) = share: q = 1/2 - sin(asin(1 - 2 share)/3).
        return BandMm * (0.5 - Math.Sin(Math.Asin(1 - (2 * share)) / 3));
    }

    private double Distance(Point place)
    {
        double[,] all = distances.Value;
        double across = Math.Abs(place.Y) / StepMm;
        double along = place.X / StepMm;
        int i = Math.Clamp((int)along, 0, all.GetLength(0) - 2);
        int j = Math.Clamp((int)across, 0, all.GetLength(1) - 2);
        double s = Math.Clamp(along - i, 0, 1);
        double t = Math.Clamp(across - j, 0, 1);
        return (all[i, j] * (1 - s) * (1 - t))
            + (all[i + 1, j] * s * (1 - t))
            + (all[i, j + 1] * (1 - s) * t)
            + (all[i + 1, j + 1] * s * t);
    }

    // Negative outside.
    private double[,] Sampled()
    {
        int along = (int)Math.Ceiling(outline.BodyLengthMm / StepMm) + 1;
        int across = (int)Math.Ceiling(outline.Turns.Max(row => row.WidthMm) / 2 / StepMm) + 1;
        double[,] all = new double[along + 1, across + 1];
        for (int i = 0; i <= along; i++)
        {
            double half = i * StepMm <= outline.BodyLengthMm ? outline.WidthAt(i * StepMm) / 2 : 0;
            for (int j = 0; j <= across; j++)
            {
                double distance = outline
                    .Half.Nearest(new Point(i * StepMm, j * StepMm))
                    .DistanceMm;
                all[i, j] = j * StepMm <= half ? distance : -distance;
            }
        }

        return all;
    }
}

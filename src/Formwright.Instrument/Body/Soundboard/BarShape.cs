using Formwright.Design.Sections;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>
/// How a bar or brace runs out: full height in its middle, and over the scoop at each end a parabola down to the end's height, level where it
/// meets the full height: h(s) = e + (h - e)(1 - (1 - s/l)²).
/// </summary>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Full height, mm.</param>
/// <param name="EndHeightMm">Height at its ends, mm.</param>
/// <param name="ScoopMm">Length of each scoop, mm; half the length at most is used.</param>
/// <param name="Section">Its section.</param>
public sealed record BarShape(
    double WidthMm,
    double HeightMm,
    double EndHeightMm,
    double ScoopMm,
    BraceSection Section
)
{
    /// <summary>Share of the rectangle that the section fills: 1; a half ellipse on a half rectangle 1/2 + π/8; a gable on one 3/4.</summary>
    public double AreaShare =>
        Section switch
        {
            BraceSection.Round => 0.5 + (Math.PI / 8),
            BraceSection.Gable => 0.75,
            _ => 1,
        };

    /// <summary>Length of each scoop on a bar of a length, mm.</summary>
    public double ScoopFor(double lengthMm) => Math.Min(ScoopMm, lengthMm / 2);

    /// <summary>Height at a place along it, mm.</summary>
    public double HeightAt(double alongMm, double lengthMm)
    {
        double scoop = ScoopFor(lengthMm);
        double fromEnd = Math.Min(alongMm, lengthMm - alongMm);
        if (fromEnd >= scoop || scoop == 0)
        {
            return HeightMm;
        }

        double left = 1 - (Math.Max(fromEnd, 0) / scoop);
        return EndHeightMm + ((HeightMm - EndHeightMm) * (1 - (left * left)));
    }

    /// <summary>Volume, mm³: the parabola fills two thirds of what it rises.</summary>
    public double VolumeMm3(double lengthMm)
    {
        double scoop = ScoopFor(lengthMm);
        double face =
            (HeightMm * (Guard.Positive(lengthMm) - (2 * scoop)))
            + (2 * scoop * (EndHeightMm + ((HeightMm - EndHeightMm) * 2 / 3)));
        return face * WidthMm * AreaShare;
    }
}

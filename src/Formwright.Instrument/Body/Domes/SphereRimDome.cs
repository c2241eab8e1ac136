using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Instrument.Body.Domes;

/// <summary>
/// A soundboard whose rim follows the sphere: flat as far as a station, then, over the blend's length, a sphere through the datum at that
/// station and at the tail on the centreline. To the sides it falls below the datum, and the ribs follow it.
/// </summary>
public sealed class SphereRimDome : IHeightField
{
    private readonly double startMm;
    private readonly double centreMm;
    private readonly double blendMm;

    /// <param name="region">The whole outline.</param>
    /// <param name="startMm">Station where the sphere starts, mm.</param>
    /// <param name="tailMm">Station of the tail, mm.</param>
    /// <param name="heightMm">Height of the sphere's top over the datum, mm.</param>
    /// <param name="blendMm">Length over which the flat runs into the sphere, mm; at most half of what is left to the tail is used.</param>
    public SphereRimDome(
        Region region,
        double startMm,
        double tailMm,
        double heightMm,
        double blendMm
    )
    {
        ArgumentNullException.ThrowIfNull(region);
        Region = region;
        this.startMm = Guard.Finite(startMm);
        double half = Guard.Positive((tailMm - startMm) / 2);
        centreMm = startMm + half;
        this.blendMm = Math.Min(Guard.Positive(blendMm), half);
        double height = Guard.Between(heightMm, 0, half);
        RadiusMm = ((half * half / Math.Max(height, 1e-9)) + height) / 2;
        Peak = new(new Point(centreMm, 0), height);
    }

    public Region Region { get; }

    public HeightPeak Peak { get; }

    /// <summary>Radius of the sphere, mm.</summary>
    public double RadiusMm { get; }

    public double HeightAt(Point place) => At(place).HeightMm;

    public HeightSample At(Point place)
    {
        if (Peak.HeightMm == 0 || place.X <= startMm || !Region.Contains(place))
        {
            return default;
        }

        double t = (place.X - startMm) / blendMm;
        HeightSample along = new(t, new Vector(1, 0), 0, 0, 0);
        return Jet.Sphere(place, centreMm, RadiusMm, Peak.HeightMm - RadiusMm)
            .Times(along.Through(Jet.Step(t, blendMm)));
    }
}

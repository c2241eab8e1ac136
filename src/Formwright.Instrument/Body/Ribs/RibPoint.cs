namespace Formwright.Instrument.Body.Ribs;

/// <summary>One place of a rib laid flat.</summary>
/// <param name="AlongMm">Length from the tail end, at mid-thickness, mm.</param>
/// <param name="FrontMm">Edge at the soundboard over (below 0) or under the rim's plane, mm; 0 with a flat rim.</param>
/// <param name="BackMm">Edge at the back under the rim's plane, mm.</param>
/// <param name="UMm">Station, body frame, mm.</param>
/// <param name="YMm">Distance from the centreline at mid-thickness, mm.</param>
/// <param name="RadiusMm">Radius at mid-thickness, mm: positive where the rib is round outwards, negative at the waist, infinite where straight.</param>
/// <param name="BackBevelDeg">How far the edge at the back is out of square to the rib, degrees: positive when its inner edge is the longer one.</param>
public readonly record struct RibPoint(
    double AlongMm,
    double FrontMm,
    double BackMm,
    double UMm,
    double YMm,
    double RadiusMm,
    double BackBevelDeg
)
{
    /// <summary>Height of the rib, square to its length, mm.</summary>
    public double HeightMm => BackMm - FrontMm;
}

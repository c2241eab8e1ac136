using Formwright.Curves;

namespace Formwright.Instrument.Body.Back;

/// <summary>A bar across the back.</summary>
/// <param name="AtMm">Station of its middle, mm.</param>
/// <param name="HalfMm">Half its length: it reaches the ribs on both sides, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height in its middle, mm.</param>
/// <param name="EndHeightMm">Height at its ends, mm.</param>
/// <param name="ScoopMm">Length over which each end runs down, mm.</param>
/// <param name="Gauge">Its glued edge, from bass to treble.</param>
/// <param name="BlankHeightMm">Height of the piece that it is cut from, mm.</param>
/// <param name="MassG">Mass, g.</param>
public sealed record BackBar(
    double AtMm,
    double HalfMm,
    double WidthMm,
    double HeightMm,
    double EndHeightMm,
    double ScoopMm,
    Gauge Gauge,
    double BlankHeightMm,
    double MassG
)
{
    public double LengthMm => 2 * HalfMm;

    /// <summary>Its ends, bass then treble, body frame.</summary>
    public (Point Bass, Point Treble) Ends => (new(AtMm, -HalfMm), new(AtMm, HalfMm));
}

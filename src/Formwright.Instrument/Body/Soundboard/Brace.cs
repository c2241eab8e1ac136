using Formwright.Curves;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>A bar or brace of the soundboard, body frame (u from the heel, y towards the treble side).</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name on the drawing: the maker's, or a letter and number of ours.</param>
/// <param name="Line">Its middle line, from one end to the other.</param>
/// <param name="Shape">Width, heights, scoops, section.</param>
/// <param name="Gauge">Its glued edge under the dome.</param>
/// <param name="Laps">Where it crosses another, along its line: places for half laps.</param>
/// <param name="BlankHeightMm">Height of the piece that it is cut from, mm.</param>
/// <param name="MassG">Mass, g.</param>
/// <param name="Field">Key of the design that sets it.</param>
public sealed record Brace(
    BraceKind Kind,
    string Name,
    IReadOnlyList<Point> Line,
    BarShape Shape,
    Gauge Gauge,
    IReadOnlyList<BraceLap> Laps,
    double BlankHeightMm,
    double MassG,
    string Field
)
{
    /// <summary>Length along its line, mm.</summary>
    public double LengthMm => Gauge.LengthMm;

    /// <summary>Height at a place along its line, mm.</summary>
    public double HeightAt(double alongMm) => Shape.HeightAt(alongMm, LengthMm);
}

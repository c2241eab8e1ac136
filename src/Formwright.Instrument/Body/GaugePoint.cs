namespace Formwright.Instrument.Body;

/// <summary>A place on a gauge.</summary>
/// <param name="AlongMm">Along the chord, or along the brace's line, from its start, mm.</param>
/// <param name="RiseMm">Over the straight line from end to end, mm, towards the outside of the box positive.</param>
public readonly record struct GaugePoint(double AlongMm, double RiseMm);

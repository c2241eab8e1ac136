namespace Formwright.Instrument.Body.Ribs;

/// <summary>A marked place of a rib.</summary>
public sealed record RibStation(RibMark Mark, RibPoint At);

namespace Formwright.Jigs.Steps;

/// <summary>
/// A figure to measure at a gate: never typed, always taken from what was computed or from the design, with the name under which it stands there.
/// </summary>
/// <param name="Reference">Where it stands: a JSON pointer into the report (<c>/workboard/relief_mm</c>), or a key of the design (<c>mould.rebate.depth</c>).</param>
/// <param name="Value">Its value.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Tolerance">How far it may be off; null where nothing is stated.</param>
public sealed record GateFigure(string Reference, double Value, string Unit, double? Tolerance);

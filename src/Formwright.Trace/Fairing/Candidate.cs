namespace Formwright.Trace.Fairing;

/// <summary>A shape that a trace is compared with.</summary>
/// <param name="Start">The curve to start from; null for the one that follows the trace.</param>
/// <param name="Shape">What the fair curve should rather look like.</param>
/// <param name="Price">How many figures describe it.</param>
/// <param name="Prior">The outline behind it, if it is one.</param>
internal sealed record Candidate(GridCurve? Start, Shape Shape, double Price, ShapePrior? Prior);

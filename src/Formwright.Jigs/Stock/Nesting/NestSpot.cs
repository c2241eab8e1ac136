namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Where a part stands on a piece of stock.</summary>
/// <param name="Part">Its number among the parts to nest.</param>
/// <param name="Turn">Number of its turn.</param>
/// <param name="Row">Row at which its box starts.</param>
/// <param name="XMm">Where its box starts along the piece, mm, from the margin.</param>
internal readonly record struct NestSpot(int Part, int Turn, int Row, double XMm);

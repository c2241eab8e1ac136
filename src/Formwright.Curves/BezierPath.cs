namespace Formwright.Curves;

/// <summary>A curve as cubic Béziers that join tangentially.</summary>
/// <param name="Pieces">In order.</param>
/// <param name="IsClosed">The last piece ends where the first starts.</param>
/// <param name="ErrorMm">Largest distance between it and the curve it was made from, measured densely, mm.</param>
public sealed record BezierPath(IReadOnlyList<CubicBezier> Pieces, bool IsClosed, double ErrorMm);

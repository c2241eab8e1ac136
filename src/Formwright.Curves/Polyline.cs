namespace Formwright.Curves;

/// <summary>A curve as straight pieces.</summary>
/// <param name="Points">Its corners; a closed one does not repeat the first.</param>
/// <param name="IsClosed">A last piece leads back to the first point.</param>
/// <param name="ErrorMm">Largest distance between it and the curve it was made from, measured densely, mm.</param>
public sealed record Polyline(IReadOnlyList<Point> Points, bool IsClosed, double ErrorMm);

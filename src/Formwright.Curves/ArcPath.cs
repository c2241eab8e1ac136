namespace Formwright.Curves;

/// <summary>A curve as arcs and straight pieces that join (nearly) tangentially.</summary>
/// <param name="Vertices">Its corners; a closed one does not repeat the first; an open one's last bulge is 0.</param>
/// <param name="IsClosed">A last piece leads back to the first vertex.</param>
/// <param name="ErrorMm">Largest distance between it and the curve it was made from, measured densely, mm.</param>
/// <param name="KinkRad">Largest change of direction between two pieces where the curve itself has none, rad.</param>
public sealed record ArcPath(
    IReadOnlyList<ArcVertex> Vertices,
    bool IsClosed,
    double ErrorMm,
    double KinkRad
);

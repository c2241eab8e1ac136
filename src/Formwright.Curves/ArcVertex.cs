namespace Formwright.Curves;

/// <summary>A corner of an <see cref="ArcPath"/> and how the piece after it bends.</summary>
/// <param name="Position">Place, mm.</param>
/// <param name="Bulge">tan(turning/4) of the piece that follows, left (counter-clockwise) positive, 0 straight: the bulge of DXF.</param>
public readonly record struct ArcVertex(Point Position, double Bulge);

namespace Formwright.Curves;

/// <summary>A place on a chain.</summary>
/// <param name="ArcLengthMm">Arc length from the chain's start, mm.</param>
/// <param name="Curve">Position, tangent and curvature there.</param>
public readonly record struct ChainPoint(double ArcLengthMm, CurvePoint Curve)
{
    public Point Position => Curve.Position;
}

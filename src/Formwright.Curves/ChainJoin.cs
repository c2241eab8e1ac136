namespace Formwright.Curves;

/// <summary>How two segments of a chain meet.</summary>
/// <param name="ArcLengthMm">Where, arc length from the chain's start, mm.</param>
/// <param name="KinkRad">Change of the tangent's angle, rad, left positive, in (-π, π]: 0 is tangent continuous (G1).</param>
/// <param name="CurvatureStep">Change of curvature, 1/mm: with no kink, 0 is curvature continuous (G2).</param>
public readonly record struct ChainJoin(double ArcLengthMm, double KinkRad, double CurvatureStep);

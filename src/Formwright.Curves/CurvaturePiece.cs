namespace Formwright.Curves;

/// <summary>A run of a chain over which the curvature only rises or only falls (or stays).</summary>
/// <param name="FromMm">Arc length where it starts, mm.</param>
/// <param name="ToMm">Arc length where it ends, mm.</param>
/// <param name="FromCurvature">κ at its start, 1/mm, left positive.</param>
/// <param name="ToCurvature">κ at its end, 1/mm.</param>
public readonly record struct CurvaturePiece(
    double FromMm,
    double ToMm,
    double FromCurvature,
    double ToCurvature
);

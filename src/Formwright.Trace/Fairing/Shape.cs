namespace Formwright.Trace.Fairing;

/// <summary>What shape a curve rather has: the curvature of a prior shape at its places, and the places where it may part from it sharply.</summary>
/// <param name="Kappa">κₚ at the places of the curve, 1/mm, or empty for none.</param>
/// <param name="Hinges">Indices of the places where κ - κₚ may turn sharply.</param>
internal sealed record Shape(double[] Kappa, IReadOnlyList<int> Hinges)
{
    /// <summary>Any smooth curve.</summary>
    internal static readonly Shape None = new([], []);
}

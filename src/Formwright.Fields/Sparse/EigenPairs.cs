using System.Collections.Immutable;

namespace Formwright.Fields.Sparse;

/// <summary>The lowest eigenpairs of K x = λ M x.</summary>
/// <param name="Values">λ, ascending.</param>
/// <param name="Vectors">x of each, with xᵀ M x = 1.</param>
/// <param name="Residuals">|K x - λ M x| / (max(|λ|, |shift|) |M x|) of each.</param>
/// <param name="Converged">All asked for met the tolerance within the limit of steps.</param>
/// <param name="Missed">
/// How many eigenvalues lie below the last one found without having been found (a second factor counts them, by Sylvester's law): 0
/// unless something went wrong.
/// </param>
/// <param name="Solves">How many solutions with the factor it took.</param>
public sealed record EigenPairs(
    ImmutableArray<double> Values,
    ImmutableArray<double[]> Vectors,
    ImmutableArray<double> Residuals,
    bool Converged,
    int Missed,
    int Solves
);

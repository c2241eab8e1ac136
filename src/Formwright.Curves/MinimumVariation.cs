namespace Formwright.Curves;

/// <summary>The fair outline of given features: the curve of least ∫(dκ/ds)² ds (Moreton &amp; Séquin 1992).</summary>
public static class MinimumVariation
{
    /// <summary>Largest move of the half perimeter in the last refinement that is asked for unless said otherwise, mm.</summary>
    public const double UsualToleranceMm = 0.01;

    /// <summary>Finds the outline, or says which feature can't be met and why.</summary>
    /// <param name="features">What the maker asks for; impossible values come back as problems.</param>
    /// <param name="toleranceMm">The chain is refined until the half perimeter moves by less than this.</param>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    public static OutlineSolution Solve(
        OutlineFeatures features,
        double toleranceMm = UsualToleranceMm
    ) => throw new NotImplementedException();
}

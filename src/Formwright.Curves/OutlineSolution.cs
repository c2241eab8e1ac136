namespace Formwright.Curves;

/// <summary>The fair outline of some features, or what stands in its way.</summary>
/// <param name="Outline">The outline; null when <paramref name="Problems"/> says why there is none.</param>
/// <param name="Problems">Empty when all features are met.</param>
/// <param name="Remarks">What a maker should see about an outline that meets all features: a hollow at heel or tail.</param>
/// <param name="Energy">∫(dκ/ds)² ds of the half outline's curve, flats left out, 1/mm³, as solved.</param>
/// <param name="RefinementMm">By how much the half perimeter moved in the last refinement, mm.</param>
/// <param name="DeviationMm">Largest distance between the chain and the curve that it stands for, mm.</param>
/// <param name="Iterations">Newton steps taken over all refinements.</param>
public sealed record OutlineSolution(
    Outline? Outline,
    IReadOnlyList<OutlineProblem> Problems,
    IReadOnlyList<OutlineProblem> Remarks,
    double Energy,
    double RefinementMm,
    double DeviationMm,
    int Iterations
);

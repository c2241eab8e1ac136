using Formwright.Curves;

namespace Formwright.Bench;

/// <summary>The Heron's outline, as most curve benchmarks use it.</summary>
internal static class CurveModels
{
    internal static readonly OutlineFeatures Heron = new(
        488,
        new(104, 282),
        new(190, 236),
        new(356, 368)
    );

    internal static readonly Outline Outline = MinimumVariation.Solve(Heron).Outline!;
}

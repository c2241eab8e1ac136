namespace Formwright.Curves;

/// <summary>An outline bent to other features, or what stands in its way.</summary>
/// <param name="Outline">The outline; null when <paramref name="Problems"/> says why there is none.</param>
/// <param name="Problems">Empty when all features are met.</param>
/// <param name="Change">How far its relative curvature plot was changed.</param>
public sealed record AdaptedOutline(
    Outline? Outline,
    IReadOnlyList<OutlineProblem> Problems,
    PlotChange Change
);

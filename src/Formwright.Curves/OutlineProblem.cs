namespace Formwright.Curves;

/// <summary>One reason why an outline can't be made.</summary>
/// <param name="Feature">Where it fails.</param>
/// <param name="Fault">Why.</param>
/// <param name="MeasuredMm">The figure that is wrong, mm; not a number only if that is what was given.</param>
/// <param name="LimitMm">What it is held against, mm; NaN where there is no single figure.</param>
public readonly record struct OutlineProblem(
    OutlineFeature Feature,
    OutlineFault Fault,
    double MeasuredMm,
    double LimitMm
);

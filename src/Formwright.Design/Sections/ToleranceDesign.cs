namespace Formwright.Design.Sections;

/// <summary>How far one figure may be off.</summary>
/// <param name="PlusMinus">Half width a of a rectangular tolerance ± a, in the figure's unit.</param>
/// <param name="Deviation">Standard deviation of a normal distribution, which then replaces the ± ; null for none.</param>
/// <param name="IsStated">It is the design's own; false for the usual one of what the plate can compute with its own uncertainty.</param>
public sealed record ToleranceDesign(double PlusMinus, double? Deviation, bool IsStated);

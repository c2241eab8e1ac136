namespace Formwright.Design.Sections;

/// <summary>How far one figure may be off.</summary>
/// <param name="PlusMinus">Half width a of a rectangular tolerance ± a, in the figure's unit.</param>
/// <param name="Deviation">Standard deviation of a normal distribution, which then replaces the ± ; null for none.</param>
/// <param name="IsStated">The file gives one of them; else ± is the usual one.</param>
public sealed record ToleranceDesign(double PlusMinus, double? Deviation, bool IsStated);

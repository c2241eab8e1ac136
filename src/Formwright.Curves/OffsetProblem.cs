namespace Formwright.Curves;

/// <summary>A part of an offset that could not be made.</summary>
/// <param name="Place">Where, mm.</param>
/// <param name="What">What failed.</param>
public readonly record struct OffsetProblem(Point Place, OffsetFault What);

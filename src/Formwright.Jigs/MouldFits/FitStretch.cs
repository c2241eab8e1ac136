namespace Formwright.Jigs.MouldFits;

/// <summary>A piece of the mould's inner face that stands off the new outline by more than it may.</summary>
/// <param name="IsProud">The mould stands inside the outline: wood must go. Otherwise it stands off, and a lining fills it.</param>
/// <param name="FromMm">Station of the outline from the heel at which it starts, mm.</param>
/// <param name="ToMm">Station at which it ends, mm.</param>
/// <param name="MostMm">Greatest distance between outline and mould, mm, square to the mould.</param>
/// <param name="MostAtMm">Station of that place, mm.</param>
public sealed record FitStretch(
    bool IsProud,
    double FromMm,
    double ToMm,
    double MostMm,
    double MostAtMm
);

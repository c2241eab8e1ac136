namespace Formwright.Instrument.Action;

/// <summary>One figure of the design before and after solving.</summary>
/// <param name="Key">Its key in the design file.</param>
/// <param name="BeforeMm">As it stands, mm; NaN where the file has none.</param>
/// <param name="AskedMm">What the others ask for, mm.</param>
/// <param name="AfterMm">The nearest to it that can be made, mm.</param>
public readonly record struct SolvedFigure(
    string Key,
    double BeforeMm,
    double AskedMm,
    double AfterMm
);

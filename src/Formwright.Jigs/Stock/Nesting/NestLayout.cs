namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Parts on pieces of stock.</summary>
/// <param name="Spots">What stands on each piece, in the order of the pieces.</param>
/// <param name="UsedMm">Length used of each piece from its margin, mm.</param>
/// <param name="Left">Parts that found no place.</param>
/// <param name="Value">What it takes, mm² of stock; less is better.</param>
internal sealed record NestLayout(
    IReadOnlyList<IReadOnlyList<NestSpot>> Spots,
    IReadOnlyList<double> UsedMm,
    IReadOnlyList<int> Left,
    double Value
);

namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Parts on pieces of stock.</summary>
/// <param name="PieceOf">Which piece each part stands on; -1 where it found no place.</param>
/// <param name="SpotOf">Where each part stands.</param>
/// <param name="UsedMm">Length used of each piece from its margin, mm.</param>
/// <param name="Value">What it takes, mm² of stock; less is better.</param>
internal sealed record NestLayout(
    int[] PieceOf,
    NestSpot[] SpotOf,
    IReadOnlyList<double> UsedMm,
    double Value
)
{
    /// <summary>Parts that found no place.</summary>
    public IEnumerable<int> Left =>
        Enumerable.Range(0, PieceOf.Length).Where(part => PieceOf[part] < 0);

    /// <summary>What stands on a piece.</summary>
    public IEnumerable<NestSpot> SpotsOn(int piece) =>
        SpotOf.Where((_, part) => PieceOf[part] == piece);
}

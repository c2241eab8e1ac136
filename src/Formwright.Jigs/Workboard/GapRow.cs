namespace Formwright.Jigs.Workboard;

/// <summary>What a straight edge resting at tail and join shows at one place of the board's centreline.</summary>
/// <param name="Place">Key of the place: <c>nut</c>, <c>fret5</c>, <c>bar1</c>, <c>deepest</c>.</param>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="GapMm">Gap between straight edge and board, mm.</param>
public sealed record GapRow(string Place, double XMm, double GapMm)
{
    /// <summary>The place in the reader's words.</summary>
    public string PlaceName
    {
        get
        {
            string word = Place.TrimEnd([.. "0123456789"]);
            return JigsWords.Of.Format($"gap.{word}", Place[word.Length..]);
        }
    }
}

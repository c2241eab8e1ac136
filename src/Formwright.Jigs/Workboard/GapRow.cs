namespace Formwright.Jigs.Workboard;

/// <summary>What a straight edge resting at tail and join shows at one place of the board's centreline.</summary>
/// <param name="Place">Key of the place: <c>nut</c>, <c>fret5</c>, <c>bar1</c>, <c>deepest</c>.</param>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="GapMm">Gap between straight edge and board, mm.</param>
/// <param name="ToleranceMm">How far it may be off, mm; 0 where the straight edge rests.</param>
public sealed record GapRow(string Place, double XMm, double GapMm, double ToleranceMm)
{
    /// <summary>Whether the straight edge rests here, so that there is nothing to measure.</summary>
    public bool IsRest => Place is "join" or "tail";

    /// <summary>The place in the reader's words.</summary>
    public string PlaceName => NameOf(Place);

    internal static string NameOf(string place)
    {
        string word = place.TrimEnd([.. "0123456789"]);
        return JigsWords.Of.Format($"gap.{word}", place[word.Length..]);
    }
}

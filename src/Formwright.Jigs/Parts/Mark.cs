using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>Something to scribe on a part.</summary>
/// <param name="Key">What it is: a key of the resources, <c>mark.centreline</c>.</param>
/// <param name="From">Start of the line, workboard frame, mm.</param>
/// <param name="To">End of the line; the same as the start for a word without a line.</param>
/// <param name="Value">A figure for the word's place {0}, if it has one.</param>
public sealed record Mark(string Key, Point From, Point To, double? Value = null)
{
    /// <summary>The word in the reader's language.</summary>
    public string Text => Value is { } value ? JigsWords.Of.Format(Key, value) : JigsWords.Of[Key];
}

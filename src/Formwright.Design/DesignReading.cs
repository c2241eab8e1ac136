using System.Diagnostics.CodeAnalysis;
using Formwright.Design.Reading;

namespace Formwright.Design;

/// <summary>What came of reading a design: the design, or everything that is wrong with the text.</summary>
/// <param name="Design">The design, null when there is any diagnostic.</param>
/// <param name="Diagnostics">All faults, in the order of the file.</param>
/// <param name="Text">The text that was read, for edits that keep its comments; empty if the file could not be read.</param>
/// <param name="Places">Where each key and group that the file gives stands; empty when there is any diagnostic.</param>
public sealed record DesignReading(
    InstrumentDesign? Design,
    IReadOnlyList<Diagnostic> Diagnostics,
    string Text,
    IReadOnlyDictionary<string, TextPlace> Places
)
{
    /// <summary>
    /// What every key came to, given or by default: a number in the key's unit (lengths in mm), a text, a word, true or false, a list of
    /// numbers, or null where the design leaves it open. Empty when there is any diagnostic.
    /// </summary>
    public IReadOnlyDictionary<string, object?> Values { get; init; } =
        new Dictionary<string, object?>();

    /// <summary>Whether a design came out.</summary>
    [MemberNotNullWhen(true, nameof(Design))]
    public bool Succeeded => Design is not null;

    /// <summary>Where a key stands, or the nearest group around it; null where the file has neither.</summary>
    /// <param name="key">Dotted key such as <c>mould.rebate.depth</c> or <c>harmonic_bars[1].at</c>.</param>
    public TextPlace? PlaceOf(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        for (string at = key; at.Length > 0; at = at[..Math.Max(0, at.LastIndexOf('.'))])
        {
            if (Places.TryGetValue(at, out TextPlace place))
            {
                return place;
            }
        }

        return null;
    }
}

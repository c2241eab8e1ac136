using System.Collections.Immutable;
using Formwright.Jigs.BoardChecks;
using Formwright.Packs;

namespace Formwright.Web.Designs;

/// <summary>The gaps that feeler gauges found under the straight edge on this workboard, as far as they were written down. Kept while the server runs.</summary>
/// <param name="Bass">Gap at the bass edge of the neck by place, mm.</param>
/// <param name="Treble">Gap at the treble edge by place, mm.</param>
public sealed record FoundGaps(
    ImmutableDictionary<string, double> Bass,
    ImmutableDictionary<string, double> Treble
)
{
    public static FoundGaps None { get; } =
        new(ImmutableDictionary<string, double>.Empty, ImmutableDictionary<string, double>.Empty);

    public bool IsEmpty => Bass.IsEmpty && Treble.IsEmpty;

    /// <summary>With one gap more, or without it.</summary>
    public FoundGaps With(string place, bool isBass, double? mm)
    {
        ArgumentNullException.ThrowIfNull(place);
        ImmutableDictionary<string, double> Change(ImmutableDictionary<string, double> side) =>
            mm is { } found ? side.SetItem(place, found) : side.Remove(place);
        return isBass ? this with { Bass = Change(Bass) } : this with { Treble = Change(Treble) };
    }

    /// <summary>What they say about the board; null where there are none, or nothing to hold them against.</summary>
    public BoardCheck? Check(Study? study)
    {
        if (
            IsEmpty || study is not { Guitar: { } guitar, Tooling: { } tooling, Action: { } action }
        )
        {
            return null;
        }

        IEnumerable<MeasuredGap> gaps = tooling
            .Workboard.GapTable.Where(row =>
                !row.IsRest && (Bass.ContainsKey(row.Place) || Treble.ContainsKey(row.Place))
            )
            .Select(row => new MeasuredGap(
                row.Place,
                Bass.TryGetValue(row.Place, out double bass) ? bass : Treble[row.Place],
                Treble.TryGetValue(row.Place, out double treble) ? treble : Bass[row.Place],
                Bass.ContainsKey(row.Place) && Treble.ContainsKey(row.Place)
            ));
        return BoardCheck.Of(guitar, tooling.Workboard, action.Model, [.. gaps]);
    }
}

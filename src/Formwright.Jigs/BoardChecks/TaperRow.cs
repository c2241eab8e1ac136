using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.BoardChecks;

/// <summary>Thickness of a taper at one place.</summary>
/// <param name="Place">Key of the place, as in the gap table.</param>
/// <param name="XMm">From the nut, mm.</param>
/// <param name="BassMm">Thickness at the bass edge of the neck, mm.</param>
/// <param name="TrebleMm">Thickness at the treble edge of the neck, mm.</param>
public sealed record TaperRow(string Place, double XMm, double BassMm, double TrebleMm)
{
    /// <summary>The place in the reader's words.</summary>
    public string PlaceName => GapRow.NameOf(Place);
}

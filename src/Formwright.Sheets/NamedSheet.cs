using Formwright.Drawing;
using Formwright.Sheets.Body;

namespace Formwright.Sheets;

/// <summary>A sheet of a pack.</summary>
/// <param name="Id">Name of its files, without an ending: <c>workboard</c>.</param>
/// <param name="Sheet">What is drawn.</param>
/// <param name="IsTiled">It is also printed in tiles on the maker's paper, to be pasted together at full size.</param>
public sealed record NamedSheet(string Id, Sheet Sheet, bool IsTiled)
{
    /// <summary>Its views, those among the schedules too, in the order in which they are drawn.</summary>
    public IReadOnlyList<View> Views =>
        [
            .. Sheet
                .Items.Select(item => item is ViewBlock block ? block.View : item as View)
                .OfType<View>(),
        ];
}

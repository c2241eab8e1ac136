using Formwright.Curves;
using Formwright.Design;

namespace Formwright.Web.Designs;

/// <summary>One design of the folder as the list shows it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Reading">What came of reading it.</param>
/// <param name="Outline">Its outline; null where there is none.</param>
/// <param name="IsDrawn">Whether its outline was worked out, found or not.</param>
/// <param name="ToSeeTo">How many findings are to be seen to; null while that is on its way, or where the file does not read.</param>
public sealed record GalleryEntry(
    string Name,
    DesignReading Reading,
    Outline? Outline,
    bool IsDrawn,
    int? ToSeeTo
)
{
    /// <summary>Whether working it out failed.</summary>
    public bool HasFailed { get; init; }
}

using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A page that shows a window of larger content, with marks of its own.</summary>
/// <param name="Name">Name of the page; empty for the key map.</param>
/// <param name="Content">Takes the content's sheet mm to page mm, without a turn.</param>
/// <param name="Clip">Where the content is seen, page mm.</param>
/// <param name="Marks">Marks over it, page mm.</param>
public sealed record PrintedPage(
    string Name,
    Placement Content,
    Box Clip,
    IReadOnlyList<Mark> Marks
);

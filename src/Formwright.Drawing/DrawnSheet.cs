namespace Formwright.Drawing;

/// <summary>A sheet laid out into marks, in sheet mm.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Marks">Its marks, in the order in which they are put on the paper.</param>
/// <param name="Views">The views with the boxes around them.</param>
/// <param name="Flaws">What the items themselves found wrong; <see cref="SheetAudit"/> finds the rest.</param>
public sealed record DrawnSheet(
    Sheet Sheet,
    IReadOnlyList<Mark> Marks,
    IReadOnlyList<DrawnView> Views,
    IReadOnlyList<SheetFlaw> Flaws
);

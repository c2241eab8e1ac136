using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>One page of a sheet that is printed in pieces.</summary>
/// <param name="Name">Row letter from the top and column number from the left: A1.</param>
/// <param name="Row">From 0 at the top.</param>
/// <param name="Column">From 0 at the left.</param>
/// <param name="Window">What it shows of the sheet, overlaps included, in sheet mm.</param>
/// <param name="IsEmpty">Whether there is nothing to be seen: it is left out.</param>
public sealed record Tile(string Name, int Row, int Column, Box Window, bool IsEmpty);

using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A flaw of a sheet, for those who make sheets.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">What it concerns.</param>
/// <param name="At">Where on the sheet, in mm.</param>
public sealed record SheetFlaw(SheetFlawKind Kind, string Message, Point? At);

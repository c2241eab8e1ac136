using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Jigs.Stock;

namespace Formwright.Sheets.Cutting;

/// <summary>A whole sheet of stock as a machine cuts it: all its parts where they lie, in the frame of the sheet (origin at a corner).</summary>
public static class CutNests
{
    private const double LetterMm = 8;

    /// <summary>The cut file of a sheet. Every part carries its number in the cut list.</summary>
    public static CutPart Of(SheetNest nest)
    {
        ArgumentNullException.ThrowIfNull(nest);
        CutPart[] parts =
        [
            .. nest.Parts.Select(placed => CutParts.Of(placed.Part, PlacementOf(placed))),
        ];
        return new CutPart(nest.Id, [.. parts.SelectMany(part => part.Contours)])
        {
            Holes = [.. parts.SelectMany(part => part.Holes)],
            Texts =
            [
                .. nest.Parts.Select(placed => new CutText(
                    $"{placed.Number}",
                    LabelPlace.Within(placed) - new Vector(LetterMm / 2, LetterMm / 2),
                    LetterMm
                )),
            ],
        };
    }

    /// <summary>From the frame of a part to that of its sheet.</summary>
    public static Placement PlacementOf(PlacedPart placed)
    {
        ArgumentNullException.ThrowIfNull(placed);
        Point origin = placed.Apply(Point.Origin);
        Vector x = placed.Apply(new Point(1, 0)) - origin;
        Vector y = placed.Apply(new Point(0, 1)) - origin;
        return new Placement(x.X, x.Y, y.X, y.Y, origin.X, origin.Y);
    }
}

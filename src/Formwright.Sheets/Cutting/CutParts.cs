using Formwright.Drawing;
using Formwright.Jigs.Parts;

namespace Formwright.Sheets.Cutting;

/// <summary>
/// Parts as a machine cuts them. Part frame of a cut file: right is y_b, up is -x (neck up, board seen from above): the workboard frame turned
/// by a quarter, never mirrored. What is cut from below is turned over about its long axis by the maker, and says so.
/// </summary>
public static class CutParts
{
    /// <summary>The cut part; a part with pockets from below is given as seen from below, so that a pocket is always cut from above.</summary>
    public static CutPart Of(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Of(
            part,
            part.IsTurnedOver ? new Placement(0, -1, -1, 0, 0, 0) : new Placement(0, -1, 1, 0, 0, 0)
        );
    }

    /// <summary>The cut part as a placement lays it.</summary>
    internal static CutPart Of(Part part, Placement place)
    {
        List<CutContour> contours =
        [
            new(CutOperation.OutsideCut, Shape.Of(part.Outside).Placed(place)),
            .. part.Insides.Select(edge => new CutContour(
                CutOperation.InsideCut,
                Shape.Of(edge).Placed(place)
            )),
            .. part.Pockets.Select(pocket => new CutContour(
                CutOperation.Pocket,
                Shape.Of(pocket.Edge).Placed(place),
                pocket.DepthMm
            )),
            .. part
                .Marks.Where(mark => mark.From != mark.To)
                .Select(mark => new CutContour(
                    CutOperation.Engrave,
                    Shape.Line(mark.From, mark.To).Placed(place)
                )),
        ];
        return new CutPart(part.Id, contours)
        {
            Holes =
            [
                .. part.Holes.Select(hole => new CutHole(
                    place.Apply(hole.Centre),
                    hole.DiameterMm,
                    hole.DepthMm
                )),
            ],
        };
    }
}

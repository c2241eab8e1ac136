using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A flat part as a machine cuts it, in part mm, seen on its upper face.</summary>
/// <param name="Id">Plain name of the part, as in the cut list.</param>
/// <param name="Contours">Lines to cut along.</param>
public sealed record CutPart(string Id, IReadOnlyList<CutContour> Contours)
{
    public IReadOnlyList<CutHole> Holes { get; init; } = [];

    public IReadOnlyList<CutText> Texts { get; init; } = [];

    /// <summary>The box around its contours and holes.</summary>
    public Box Bounds()
    {
        Box box = Contours.Aggregate(
            Box.Empty,
            static (all, contour) => all.With(contour.Shape.Bounds())
        );
        return Holes.Aggregate(
            box,
            static (all, hole) => all.With(Shape.Circle(hole.Centre, hole.DiameterMm / 2).Bounds())
        );
    }

    /// <summary>The part as a drawing shows it: outlines wide, pockets dashed, holes with their crosses.</summary>
    public IReadOnlyList<Item> Items() =>
        [
            .. Contours.Select(contour => new Line(contour.Shape, StyleOf(contour.Operation))),
            .. Holes.Select(hole => new Hole(hole.Centre, hole.DiameterMm)),
            .. Texts.Select(text => new Label(text.Text, text.At)
            {
                Style = TextStyle.Body with { HeightMm = text.HeightMm },
                Degrees = text.Degrees,
            }),
        ];

    private static LineStyle StyleOf(CutOperation operation) =>
        operation switch
        {
            CutOperation.Pocket => LineStyle.Pocket,
            CutOperation.Engrave => LineStyle.Engrave,
            _ => LineStyle.Cut,
        };
}

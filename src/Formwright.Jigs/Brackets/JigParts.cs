using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Brackets;

/// <summary>Board and brackets as parts that are cut. The board's frame has x from the line across it; a bracket's has x from its front face.</summary>
internal static class JigParts
{
    /// <summary>Nut, two washers and the tip of the bolt, in diameters (common practice; nut 0.8, washers 0.2 each, tip 0.25).</summary>
    private const double NutAndWashers = 1.45;

    /// <summary>Shortest bolt from under the board to over the nut on its seat, mm.</summary>
    public static double BoltLengthMm(JigDesign design, BracketShape shape) =>
        design.BoardThicknessMm + shape.SeatMm + (NutAndWashers * design.Bracket.BoltDiameterMm);

    public static IEnumerable<Part> Of(
        JigDesign design,
        BracketShape shape,
        SlotLine[] slots,
        RibLine[] ribs,
        double holeMm,
        int brackets
    )
    {
        yield return Board(design, slots, ribs, holeMm);
        if (brackets == 0)
        {
            yield break;
        }

        BracketDesign bracket = design.Bracket;
        ArcPath plan = Straight(shape.Plan);
        double middle = bracket.BaseMm / 2;
        ArcPath slot = Stadium(
            new Point(bracket.BoltFromMm, 0),
            new Point(bracket.BoltToMm, 0),
            holeMm
        );
        ArcPath seat = Stadium(
            new Point(bracket.BoltFromMm, 0),
            new Point(bracket.BoltToMm, 0),
            bracket.WasherDiameterMm
        );
        Pocket[] steps =
            bracket is { ReliefDepthMm: > 0, ReliefHeightMm: > 0 }
            && bracket.ReliefHeightMm < bracket.LayerMm
                ? [.. Steps(bracket, shape)]
                : [];
        yield return Layer("jig-bracket-bottom", 1, slot, steps);
        if (shape.FootLayers > 1)
        {
            yield return Layer("jig-bracket-foot", shape.FootLayers - 1, slot, []);
        }

        if (shape.Layers > shape.FootLayers)
        {
            yield return Layer("jig-bracket-top", shape.Layers - shape.FootLayers, seat, []);
        }

        Part Layer(string id, int each, ArcPath opening, Pocket[] pockets) =>
            new(
                id,
                "material.plywood",
                bracket.LayerMm,
                each * brackets,
                plan,
                [opening],
                pockets,
                [],
                [new Mark("mark.centreline", new Point(0, 0), new Point(2 * middle, 0))]
            );
    }

    private static Part Board(JigDesign design, SlotLine[] slots, RibLine[] ribs, double holeMm)
    {
        double from = ribs.Min(rib => rib.HeelXMm);
        double to = ribs.Max(rib => rib.TailXMm);
        double side = ribs.Max(rib => rib.Half.Box.Max.Y);
        foreach (SlotLine slot in slots)
        {
            from = Math.Min(from, Math.Min(slot.From.X, slot.To.X));
            to = Math.Max(to, Math.Max(slot.From.X, slot.To.X));
            side = Math.Max(side, Math.Max(slot.From.Y, slot.To.Y));
        }

        from -= design.EdgeMm;
        to += design.EdgeMm;
        side += design.EdgeMm;
        ArcPath[] bass = [.. slots.Select(slot => Stadium(slot.From, slot.To, holeMm))];
        return new Part(
            "jig-board",
            "material.plywood",
            design.BoardThicknessMm,
            1,
            Straight([new(from, -side), new(to, -side), new(to, side), new(from, side)]),
            [.. bass, .. bass.Select(ArcPaths.Mirrored)],
            [],
            [],
            [
                new Mark("mark.centreline", new Point(from, 0), new Point(to, 0)),
                new Mark(
                    $"mark.jig-{Design.Reading.Choices.NameOf(design.Align)}",
                    new Point(0, -side),
                    new Point(0, side)
                ),
            ]
        );
    }

    // The foot of both faces is cut back over the whole width of the face, and over the flanks that run off within that depth.
    private static IEnumerable<Pocket> Steps(BracketDesign bracket, BracketShape shape)
    {
        double depth = bracket.ReliefDepthMm;
        double half = shape.WidthMm / 2;
        foreach (
            (double from, double to) in new[]
            {
                (0, depth),
                (bracket.BaseMm - depth, bracket.BaseMm),
            }
        )
        {
            yield return new Pocket(
                Straight([new(from, -half), new(to, -half), new(to, half), new(from, half)]),
                bracket.ReliefHeightMm,
                FromBelow: true
            );
        }
    }

    private static ArcPath Straight(IReadOnlyList<Point> corners)
    {
        ContourBuilder edge = new();
        foreach (Point corner in corners)
        {
            edge.LineTo(corner);
        }

        return edge.Close();
    }

    /// <summary>A slot with round ends.</summary>
    private static ArcPath Stadium(Point from, Point to, double widthMm)
    {
        Vector across =
            from == to
                ? new Vector(0, widthMm / 2)
                : (to - from).Left * (widthMm / 2 / from.DistanceTo(to));
        return new ArcPath(
            [
                new ArcVertex(from - across, 0),
                new ArcVertex(to - across, 1),
                new ArcVertex(to + across, 0),
                new ArcVertex(from + across, 1),
            ],
            true,
            0,
            0
        );
    }
}

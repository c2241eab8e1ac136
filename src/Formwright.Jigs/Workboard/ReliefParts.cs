using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Workboard;

/// <summary>
/// The parts that make a relief: gauges to slide across a carved one; ring, packing under the neck and blocks under the harmonic bars of an
/// overlay. Gauges and blocks are seen from the tail: y_b across, and their x is the depth below the board's face (so that up on a page is up).
/// </summary>
internal static class ReliefParts
{
    private const double GaugeHeightMm = 40;
    private const double GaugeStockMm = 6;

    /// <summary>Play of a block at each end, mm.</summary>
    private const double BlockPlayMm = 1;

    /// <summary>How much wider a block is than its bar, mm: room for the clamp (common practice).</summary>
    private const double BlockWiderMm = 20;

    public static IEnumerable<Part> Of(Guitar guitar, Relief relief, MouldPlan mould) =>
        relief.Method == ReliefMethod.Carved
            ? Gauges(guitar, relief)
            : Overlay(guitar, relief, mould).Concat(Blocks(guitar, relief));

    // At the deepest place, and half way from it to both ends of the hollow.
    private static IEnumerable<Part> Gauges(Guitar guitar, Relief relief)
    {
        if (relief.DeepestMm <= 0)
        {
            yield break;
        }

        double deepest = relief.Deepest.X;
        double end = relief.Shape.Region.Bounds.Max.X;
        double[] stations = [(guitar.Dome.StartUMm + deepest) / 2, deepest, (deepest + end) / 2];
        for (int i = 0; i < stations.Length; i++)
        {
            double u = stations[i];
            double half = guitar.Outline.WidthAt(u) / 2;
            ArcPath edge = ProfileEdge.Of(
                half,
                -GaugeHeightMm,
                y => relief.Shape.HeightAt(new Point(u, y))
            );
            yield return new Part(
                $"relief-gauge{i + 1}",
                "material.template",
                GaugeStockMm,
                1,
                edge,
                [],
                [],
                [],
                Marks(guitar.JoinMm + u, -GaugeHeightMm, half)
            );
        }
    }

    private static IEnumerable<Part> Overlay(Guitar guitar, Relief relief, MouldPlan mould)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        double join = guitar.JoinMm;
        double half = board.NeckWidthMm / 2;
        bool cork = relief.Method == ReliefMethod.CorkOverlay;
        yield return new Part(
            "overlay",
            cork ? "material.cork" : "material.plywood",
            board.OverlayThicknessMm,
            1,
            BoardEdge.Of(guitar, join) ?? BoardEdge.BodyOnly(guitar),
            BoardEdge.Belly(guitar) is { } belly ? [belly] : [],
            [],
            [
                .. mould
                    .Fasteners.Where(each => !MeetsPacking(each, join, half))
                    .Select(each => new Hole(each.Kind, each.Centre, each.DiameterMm)),
            ],
            [
                new Mark(
                    "mark.centreline",
                    new Point(join, 0),
                    new Point(guitar.TailMm + board.MarginMm, 0)
                ),
            ]
        );
        yield return new Part(
            "packing",
            "material.plywood",
            board.OverlayThicknessMm,
            1,
            new ContourBuilder()
                .LineTo(new Point(-board.BeyondNutMm, -half))
                .LineTo(new Point(-board.BeyondNutMm, half))
                .LineTo(new Point(join, half))
                .LineTo(new Point(join, -half))
                .Close(),
            [],
            [],
            [],
            [
                new Mark("mark.centreline", new Point(-board.BeyondNutMm, 0), new Point(join, 0)),
                new Mark("mark.nut", new Point(0, -half), new Point(0, half)),
            ]
        );
    }

    // A hole on the joint of ring and packing is drilled from the board, once both are glued on.
    private static bool MeetsPacking(Fastener hole, double join, double half) =>
        hole.Centre.X < join + hole.DiameterMm && Math.Abs(hole.Centre.Y) < half + hole.DiameterMm;

    private static IEnumerable<Part> Blocks(Guitar guitar, Relief relief)
    {
        if (!guitar.Design.Workboard.SupportBlocks)
        {
            yield break;
        }

        for (int i = 0; i < guitar.Design.HarmonicBars.Count; i++)
        {
            HarmonicBarDesign bar = guitar.Design.HarmonicBars[i];
            double half = HalfWidth(relief, bar.AtMm) - BlockPlayMm;
            if (half <= BlockPlayMm)
            {
                continue;
            }

            double u = bar.AtMm;
            // From the board up to the dome's underside, which lies as deep below the overlay's face as the dome is high.
            ArcPath edge = ProfileEdge.Of(
                half,
                relief.DeepestMm,
                y => relief.Dome.HeightAt(new Point(u, y))
            );
            yield return new Part(
                $"support-block{i + 1}",
                "material.block",
                bar.WidthMm + BlockWiderMm,
                1,
                edge,
                [],
                [],
                [],
                Marks(guitar.JoinMm + u, relief.DeepestMm, half)
            );
        }
    }

    private static Mark[] Marks(double fromNut, double straight, double half)
    {
        Point at = new(straight / 2, half * 0.5);
        Point bass = new(straight / 2, half * 0.85);
        return
        [
            new Mark("mark.centreline", new Point(straight, 0), new Point(0, 0)),
            new Mark("mark.station", at, at, fromNut),
            new Mark("mark.bass", bass, bass),
        ];
    }

    private static double HalfWidth(Relief relief, double u)
    {
        if (!relief.Shape.Region.Contains(new Point(u, 0)))
        {
            return 0;
        }

        double low = 0;
        double high = relief.Shape.Region.Bounds.Max.Y;
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = relief.Shape.Region.Contains(new Point(u, middle))
                ? (middle, high)
                : (low, middle);
        }

        return low;
    }
}

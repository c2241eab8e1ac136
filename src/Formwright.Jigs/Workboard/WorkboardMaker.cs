using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Workboard;

/// <summary>Makes the workboard of a guitar.</summary>
public static class WorkboardMaker
{
    /// <summary>The board, its relief, ramp, gap table and findings.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="mould">Its mould, whose dowels and bolts pass through the board.</param>
    /// <param name="soundboard">Its soundboard where it is there already; null to work it out.</param>
    public static WorkboardPlan Of(
        Guitar guitar,
        MouldPlan mould,
        SoundboardPlan? soundboard = null
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(mould);
        Relief relief = Relief.Of(guitar);
        List<Finding> findings = [];
        ArcPath? edge = BoardEdge.Of(guitar);
        WorkboardDesign design = guitar.Design.Workboard;
        if (edge is null)
        {
            findings.Add(
                WorkboardRules.NeckWiderThanBoard.Broken(
                    design.NeckWidthMm,
                    guitar.Outline.WidthAt(guitar.Design.Outline.UpperBout.AtMm)
                        + (2 * design.MarginMm),
                    "workboard.neck_width"
                )
            );
            edge = BoardEdge.BodyOnly(guitar);
        }

        IReadOnlyList<Spot> spots = SpotPlan.Of(guitar, relief);
        Part board = new(
            "workboard",
            "material.plywood",
            design.ThicknessMm,
            1,
            edge,
            [],
            [],
            [
                .. mould.Fasteners.Select(HoleInBoard),
                .. spots.Select(spot => InBoard(spot, design)),
            ],
            [.. Marks(guitar)]
        );
        findings.AddRange(Check(guitar, relief));
        BraceEndGap[] ends = [.. ReliefChecks.Ends(guitar, relief, soundboard)];
        findings.AddRange(ReliefChecks.Of(guitar, relief, ends));
        return new WorkboardPlan(
            board,
            [.. ReliefParts.Of(guitar, relief, mould)],
            spots,
            relief,
            guitar.Design.Neck.RampMm,
            Gaps(guitar, relief),
            [.. relief.Clearances(guitar)],
            ends,
            findings
        );
    }

    private static Hole InBoard(Spot spot, WorkboardDesign design) =>
        new(HoleKind.Spot, new Point(spot.XMm, spot.YBMm), design.SpotDiameterMm, spot.DepthMm);

    private static Hole HoleInBoard(Fastener fastener) =>
        new(fastener.Kind, fastener.Centre, fastener.DiameterMm);

    private static IEnumerable<Mark> Marks(Guitar guitar)
    {
        double half = guitar.Design.Workboard.NeckWidthMm / 2;
        double tail = guitar.TailMm;
        double margin = guitar.Design.Workboard.MarginMm;
        yield return new Mark(
            "mark.centreline",
            new Point(-guitar.Design.Workboard.BeyondNutMm, 0),
            new Point(tail + margin, 0)
        );
        yield return new Mark("mark.nut", new Point(0, -half), new Point(0, half));
        yield return new Mark(
            "mark.join",
            new Point(guitar.JoinMm, -half),
            new Point(guitar.JoinMm, half)
        );
        yield return new Mark("mark.tail", new Point(tail, -half), new Point(tail, half));
        double widest =
            (guitar.Outline.WidthAt(guitar.Design.Outline.LowerBout.AtMm) / 2) + (margin / 2);
        double at = guitar.JoinMm + guitar.Design.Outline.LowerBout.AtMm;
        yield return new Mark("mark.bass", new Point(at, widest), new Point(at, widest));
        yield return new Mark("mark.treble", new Point(at, -widest), new Point(at, -widest));
    }

    private static List<GapRow> Gaps(Guitar guitar, Relief relief)
    {
        double join = guitar.JoinMm;
        List<GapRow> rows = [OnRamp(guitar, "nut", 0)];
        for (int fret = 1; fret < guitar.Design.Identity.JoinFret; fret++)
        {
            double x = guitar.Design.Identity.ScaleMm * (1 - Math.Pow(2, -fret / 12.0));
            rows.Add(OnRamp(guitar, $"fret{fret}", x));
        }

        rows.Add(new GapRow("join", join, 0, 0));
        double within = GapTolerance.InRelief(guitar.Design.Workboard.ClearanceMm);
        for (int i = 0; i < guitar.Design.HarmonicBars.Count; i++)
        {
            double at = guitar.Design.HarmonicBars[i].AtMm;
            double depth = relief.Shape.HeightAt(new Point(at, 0));
            rows.Add(new GapRow($"bar{i + 1}", join + at, depth, within));
        }

        rows.Add(new GapRow("deepest", join + relief.Deepest.X, relief.DeepestMm, within));
        rows.Add(new GapRow("tail", guitar.TailMm, 0, 0));
        return [.. rows.OrderBy(row => row.XMm)];
    }

    private static GapRow OnRamp(Guitar guitar, string place, double x)
    {
        double share = (guitar.JoinMm - x) / guitar.JoinMm;
        return new GapRow(
            place,
            x,
            guitar.Design.Neck.RampMm * share,
            GapTolerance.OnRamp(guitar.Design.Workboard.RampToleranceMm, share)
        );
    }

    private static IEnumerable<Finding> Check(Guitar guitar, Relief relief)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        Place deepest = new(guitar.JoinMm + relief.Deepest.X, relief.Deepest.Y);
        double floor = board.ThicknessMm - WorkboardRules.LeastFloorMm;
        bool carved = relief.Method == ReliefMethod.Carved;
        if (carved && relief.DeepestMm > floor)
        {
            yield return WorkboardRules.ReliefDeeperThanBoard.Broken(
                relief.DeepestMm,
                floor,
                "workboard.thickness",
                deepest,
                board.ThicknessMm
            );
        }

        if (guitar.Design.Neck.RampMm > floor)
        {
            yield return WorkboardRules.RampDeeperThanBoard.Broken(
                guitar.Design.Neck.RampMm,
                floor,
                "neck.ramp",
                new Place(0, 0),
                board.ThicknessMm
            );
        }

        if (carved && guitar.Design.Dome.HeightMm > 0 && board.ClearanceMm == 0)
        {
            yield return WorkboardRules.NoClearance.Broken(0, 0, "workboard.clearance", deepest);
        }

        if (board.MarginMm < guitar.Design.Mould.WallMm)
        {
            yield return WorkboardRules.MarginNarrowerThanWall.Broken(
                board.MarginMm,
                guitar.Design.Mould.WallMm,
                "workboard.margin"
            );
        }

        for (int i = 0; i < guitar.Design.HarmonicBars.Count; i++)
        {
            double at = guitar.Design.HarmonicBars[i].AtMm;
            double depth = relief.Shape.HeightAt(new Point(at, 0));
            if (depth > WorkboardRules.SupportMm && (carved || !board.SupportBlocks))
            {
                yield return WorkboardRules.BarUnsupported.Broken(
                    depth,
                    WorkboardRules.SupportMm,
                    $"harmonic_bars[{i}].at",
                    new Place(guitar.JoinMm + at, 0),
                    i + 1
                );
            }
        }
    }
}

using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Wood;
using Place = Formwright.Findings.Place;

namespace Formwright.Jigs.Workboard;

/// <summary>What an overlay can get wrong, and what would press on a hollow.</summary>
internal static class ReliefChecks
{
    /// <summary>Packing left at the nut once the ramp is planed into it, mm (common practice).</summary>
    private const double LeastPackingMm = 1;

    public static IEnumerable<Finding> Of(
        Guitar guitar,
        Relief relief,
        IReadOnlyList<BraceEndGap> ends
    )
    {
        WorkboardDesign board = guitar.Design.Workboard;
        if (relief.Method != ReliefMethod.Carved)
        {
            double needed = guitar.Design.Dome.HeightMm + board.ClearanceMm;
            if (board.OverlayThicknessMm < needed)
            {
                yield return WorkboardRules.OverlayTooThin.Broken(
                    board.OverlayThicknessMm,
                    needed,
                    "workboard.overlay_thickness"
                );
            }

            if (guitar.Design.Dome.Kind == DomeKind.RimOnSphere)
            {
                yield return WorkboardRules.OverlayWithoutRim.Broken(0, 0, "workboard.relief");
            }

            if (board.OverlayThicknessMm - guitar.Design.Neck.RampMm < LeastPackingMm)
            {
                yield return WorkboardRules.PackingThin.Broken(
                    guitar.Design.Neck.RampMm,
                    board.OverlayThicknessMm - LeastPackingMm,
                    "workboard.overlay_thickness",
                    new Place(0, 0),
                    board.OverlayThicknessMm
                );
            }
        }

        // The end that stands over the deepest gap speaks for all of them.
        BraceEndGap[] open = [.. ends.Where(end => !end.IsHeld)];
        if (open.MaxBy(end => end.GapMm) is { } worst)
        {
            yield return WorkboardRules.BraceEndOverHollow.Broken(
                worst.GapMm,
                Held(guitar),
                "workboard.relief",
                new Place(worst.XMm, -worst.YBMm),
                worst.Brace,
                open.Length
            );
        }
    }

    /// <summary>What lies open under the ends of all braces but the harmonic bars.</summary>
    public static IEnumerable<BraceEndGap> Ends(
        Guitar guitar,
        Relief relief,
        SoundboardPlan? soundboard
    )
    {
        double held = Held(guitar);
        SoundboardPlan plan =
            soundboard
            ?? SoundboardPlan.Of(
                guitar.Design,
                guitar.Outline,
                guitar.Dome.Field,
                Timber.Of(guitar.Design.Wood.Soundboard)
            );
        foreach (Brace brace in plan.Braces.Where(each => each.Kind != BraceKind.HarmonicBar))
        {
            foreach (Point end in new[] { brace.Line[0], brace.Line[^1] })
            {
                double gap = relief.ClearanceAt(end);
                yield return new BraceEndGap(
                    brace.Name,
                    guitar.JoinMm + end.X,
                    -end.Y,
                    gap,
                    gap <= held
                );
            }
        }
    }

    // What a carved relief would leave at most.
    private static double Held(Guitar guitar) =>
        guitar.Design.Workboard.ClearanceMm + WorkboardRules.SupportMm;
}

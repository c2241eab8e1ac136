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

    public static IEnumerable<Finding> Of(Guitar guitar, Relief relief)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        if (relief.Method != ReliefMethod.Carved)
        {
            double needed = guitar.Design.Dome.HeightMm + board.ClearanceMm;
            if (board.OverlayMm < needed)
            {
                yield return WorkboardRules.OverlayTooThin.Broken(
                    board.OverlayMm,
                    needed,
                    "workboard.overlay_thickness"
                );
            }

            if (guitar.Design.Dome.Kind == DomeKind.RimOnSphere)
            {
                yield return WorkboardRules.OverlayWithoutRim.Broken(0, 0, "workboard.relief");
            }

            if (board.OverlayMm - guitar.Design.Neck.RampMm < LeastPackingMm)
            {
                yield return WorkboardRules.PackingThin.Broken(
                    guitar.Design.Neck.RampMm,
                    board.OverlayMm - LeastPackingMm,
                    "workboard.overlay_thickness",
                    new Place(0, 0),
                    board.OverlayMm
                );
            }
        }

        if (BraceEnds(guitar, relief) is { } ends)
        {
            yield return ends;
        }
    }

    // The end that stands over the deepest gap speaks for all of them.
    private static Finding? BraceEnds(Guitar guitar, Relief relief)
    {
        double limit = guitar.Design.Workboard.ClearanceMm + WorkboardRules.SupportMm;
        SoundboardPlan plan = SoundboardPlan.Of(
            guitar.Design,
            guitar.Outline,
            guitar.Dome.Field,
            Timber.Of(guitar.Design.Wood.Soundboard)
        );
        (Brace Brace, Point End, double Gap)[] over =
        [
            .. plan
                .Braces.Where(brace => brace.Kind != BraceKind.HarmonicBar)
                .SelectMany(brace => new[] { (brace, brace.Line[0]), (brace, brace.Line[^1]) })
                .Select(end => (end.brace, end.Item2, relief.ClearanceAt(end.Item2)))
                .Where(end => end.Item3 > limit),
        ];
        if (over.Length == 0)
        {
            return null;
        }

        (Brace worst, Point place, double gap) = over.MaxBy(end => end.Gap);
        return WorkboardRules.BraceEndOverHollow.Broken(
            gap,
            limit,
            "workboard.relief",
            new Place(guitar.JoinMm + place.X, place.Y),
            worst.Name,
            over.Length
        );
    }
}

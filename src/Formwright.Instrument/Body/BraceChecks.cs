using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Bridges;

namespace Formwright.Instrument.Body;

/// <summary>Holds bars and braces of the soundboard against their rules.</summary>
internal static class BraceChecks
{
    // A brace whose middle passes nearer to the corner of a wing than this sits right under its end (common practice).
    private const double BridgeEndMm = 4;

    // A gauge flatter than this needs no arch (the plane's own error).
    private const double FlatGaugeMm = 0.1;

    internal static IEnumerable<Finding> Of(BodyPlan plan)
    {
        foreach (Brace brace in plan.Soundboard.Braces)
        {
            foreach (
                Finding? finding in new[]
                {
                    Hole(plan, brace),
                    Outside(plan, brace),
                    Bridge(plan, brace),
                    Bars(plan, brace),
                    Dome(plan, brace),
                }
            )
            {
                if (finding is not null)
                {
                    yield return finding;
                }
            }
        }
    }

    private static Finding? Hole(BodyPlan plan, Brace brace)
    {
        SoundholeDesign hole = plan.Guitar.Design.Soundhole;
        Point centre = new(hole.AtMm, 0);
        double gap = BraceLines.Distance(brace.Line, centre) - (brace.Shape.WidthMm / 2);
        return gap < hole.RadiusMm
            ? BodyRules.BraceThroughSoundhole.Broken(
                gap,
                hole.RadiusMm,
                brace.Field,
                At(plan, centre),
                brace.Name
            )
            : null;
    }

    // Ends (and corners of the line) must lie inside the ribs.
    private static Finding? Outside(BodyPlan plan, Brace brace)
    {
        double rib = plan.Guitar.Design.Ribs.ThicknessMm;
        foreach (Point place in brace.Line)
        {
            if (!BraceLines.HasRoom(plan.Guitar.Outline, place, rib - 0.01))
            {
                NearestPoint nearest = plan.Guitar.Outline.Half.Nearest(
                    new Point(place.X, Math.Abs(place.Y))
                );
                return BodyRules.BraceOutside.Broken(
                    -nearest.SignedDistanceMm,
                    rib,
                    brace.Field,
                    At(plan, place),
                    brace.Name
                );
            }
        }

        return null;
    }

    private static Finding? Bridge(BodyPlan plan, Brace brace)
    {
        BridgePlan bridge = plan.Bridge;
        if (brace.Kind == BraceKind.HarmonicBar)
        {
            double gap =
                Math.Abs(brace.Line[0].X - bridge.Middle.X)
                - ((bridge.WidthMm + brace.Shape.WidthMm) / 2);
            return gap < 0
                ? BodyRules.BarUnderBridge.Broken(
                    gap,
                    0,
                    brace.Field,
                    At(plan, bridge.Middle),
                    brace.Name
                )
                : null;
        }

        foreach (int side in new[] { -1, 1 })
        {
            Point end = bridge.Middle + new Vector(0, side * bridge.LengthMm / 2);
            double distance = BraceLines.Distance(brace.Line, end);
            if (distance < BridgeEndMm)
            {
                return BodyRules.BraceAtBridgeEnd.Broken(
                    distance,
                    BridgeEndMm,
                    brace.Field,
                    At(plan, end),
                    brace.Name
                );
            }
        }

        return null;
    }

    private static Finding? Bars(BodyPlan plan, Brace brace)
    {
        if (brace.Kind == BraceKind.HarmonicBar)
        {
            return null;
        }

        foreach (BraceLap lap in brace.Laps)
        {
            Brace? bar = plan.Soundboard.Braces.FirstOrDefault(other =>
                other.Kind == BraceKind.HarmonicBar && other.Name == lap.Other
            );
            if (bar is not null)
            {
                return BodyRules.BraceThroughBar.Broken(
                    brace.HeightAt(lap.AlongMm),
                    0,
                    brace.Field,
                    At(plan, lap.Place),
                    brace.Name,
                    bar.Name
                );
            }
        }

        return null;
    }

    private static Finding? Dome(BodyPlan plan, Brace brace) =>
        brace.Kind == BraceKind.HarmonicBar && Math.Abs(brace.Gauge.MostMm) > FlatGaugeMm
            ? BodyRules.BarOverDome.Broken(
                brace.Gauge.MostMm,
                FlatGaugeMm,
                "dome.start",
                At(plan, brace.Line[0].Towards(brace.Line[^1], 0.5)),
                brace.Name
            )
            : null;

    private static Place At(BodyPlan plan, Point place) =>
        new(plan.Guitar.JoinMm + place.X, place.Y);
}

using Formwright.Design.Sections;
using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.Steps;

/// <summary>The steps that make the workboard, whichever way its relief is made.</summary>
/// <param name="Rested">The sheets have lain in the shop.</param>
/// <param name="Lines">Centreline, nut, join and tail are scribed.</param>
/// <param name="Checked">Ramp and relief have passed the straight edge.</param>
/// <param name="Sealed">It is finished on both faces.</param>
public sealed record BoardSteps(Step Rested, Step Lines, Step Checked, Step Sealed)
{
    internal static BoardSteps Of(Tooling tooling, GateFigures figures, TemplateSteps templates)
    {
        WorkboardPlan plan = tooling.Workboard;
        Step rested = new("rest-sheets", WorkPiece.Workboard) { Wait = Wait.Rest };
        Step blank = new("board-blank", WorkPiece.Workboard, templates.Half, rested)
        {
            Tools = [Tool.Bandsaw, Tool.Caliper],
            Gates = [figures.BoardThickness],
            Cares = [Care.Bandsaw, Care.Dust],
        };
        Step lines = new("board-lines", WorkPiece.Workboard, blank)
        {
            Tools = [Tool.StraightEdge, Tool.Square, Tool.Rule],
        };
        Step stiff = tooling.Spine.DepthMm > 0 ? Spined(figures, rested, lines) : lines;
        Step feet = new("feet", WorkPiece.Workboard, stiff)
        {
            Tools = [Tool.Square, Tool.Glue, Tool.Clamps],
            Wait = Wait.Glue,
            Gates = [figures.FootHeight, figures.TailFoot],
        };
        Step flat = new("board-flat", WorkPiece.Workboard, feet)
        {
            Tools = [Tool.StraightEdge, Tool.FeelerGauges, Tool.Plane, Tool.SandingBlock],
            Cares = [Care.EdgeTools],
        };
        (Step ramp, Step relief) =
            plan.Relief.Method == ReliefMethod.Carved
                ? Carved(plan, figures, templates, flat)
                : Overlay(plan, figures, flat);
        Step passed = new("gap-check", WorkPiece.Workboard, ramp, relief)
        {
            Tools = [Tool.StraightEdge, Tool.FeelerGauges],
            Gates = [.. figures.AllGaps],
        };
        Step finished = new("board-seal", WorkPiece.Workboard, passed)
        {
            Tools = [Tool.Sealer, Tool.Brush],
            Wait = Wait.Finish,
            Cares = [Care.Finish],
        };
        return new BoardSteps(rested, lines, passed, finished);
    }

    // The spine goes on before the face is trued: its glue and clamps may move the board.
    private static Step Spined(GateFigures figures, Step rested, Step lines)
    {
        Step spine = new("spine-glue", WorkPiece.Workboard, rested)
        {
            Tools = [Tool.Plane, Tool.StraightEdge, Tool.Glue, Tool.Clamps],
            Wait = Wait.Glue,
            Gates = [figures.SpineDepth],
            Cares = [Care.EdgeTools],
        };
        return new Step("spine-fit", WorkPiece.Workboard, lines, spine)
        {
            Tools = [Tool.StraightEdge, Tool.Glue, Tool.Clamps],
            Wait = Wait.Glue,
        };
    }

    // Without a dome there is nothing to carve: flat is enough.
    private static (Step Ramp, Step Relief) Carved(
        WorkboardPlan plan,
        GateFigures figures,
        TemplateSteps templates,
        Step flat
    )
    {
        Step ramp = Ramp(figures, flat);
        if (plan.Spots.Count == 0)
        {
            return (ramp, flat);
        }

        Step gauges = new("relief-gauges", WorkPiece.Workboard, templates.Printed)
        {
            Tools = [Tool.Saw, Tool.SandingBlock],
            Cares = [Care.Dust],
        };
        Step spots = new("relief-spots", WorkPiece.Workboard, flat)
        {
            Tools = [Tool.Drill, Tool.DepthStop],
            Gates = [figures.Relief],
            Cares = [Care.Drill],
        };
        Step carved = new("relief-carve", WorkPiece.Workboard, spots, gauges)
        {
            Tools = [Tool.Gouge, Tool.Scraper, Tool.SandingBlock, Tool.DepthGauge],
            Gates = [figures.Relief],
            Cares = [Care.EdgeTools, Care.Dust],
        };
        return (ramp, carved);
    }

    private static (Step Ramp, Step Relief) Overlay(
        WorkboardPlan plan,
        GateFigures figures,
        Step flat
    )
    {
        Step cut = new("overlay-cut", WorkPiece.Workboard, flat)
        {
            Tools = [Tool.Saw, Tool.SandingBlock, Tool.Caliper],
            Cares = [Care.Dust],
        };
        Step glued = new("overlay-glue", WorkPiece.Workboard, cut)
        {
            Tools = [Tool.Glue, Tool.Clamps, Tool.WaxedPaper],
            Wait = Wait.Glue,
        };
        Step ramp = Ramp(figures, glued);
        if (!plan.Parts.Any(part => part.Id.StartsWith("support-block", StringComparison.Ordinal)))
        {
            return (ramp, glued);
        }

        Step blocks = new("support-blocks", WorkPiece.Workboard, glued)
        {
            Tools = [Tool.Plane, Tool.SandingBlock, Tool.DepthGauge],
            Gates = [figures.Relief],
            Cares = [Care.EdgeTools],
        };
        return (ramp, blocks);
    }

    private static Step Ramp(GateFigures figures, Step after) =>
        new("ramp", WorkPiece.Workboard, after)
        {
            Tools = [Tool.Plane, Tool.StraightEdge, Tool.FeelerGauges],
            Gates = [.. figures.NutGap],
            Cares = [Care.EdgeTools],
        };
}

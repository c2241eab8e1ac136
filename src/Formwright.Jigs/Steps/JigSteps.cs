using Formwright.Jigs.Brackets;

namespace Formwright.Jigs.Steps;

/// <summary>The steps that make the adjustable bracket jig and set it.</summary>
/// <param name="Last">It is set, and checked before each use.</param>
public sealed record JigSteps(Step Last)
{
    internal static JigSteps Of(JigPlan jig, TemplateSteps templates, BoardSteps board)
    {
        Step lines = new("jig-board", WorkPiece.Jig, templates.Printed, board.Rested)
        {
            Tools = [Tool.Bandsaw, Tool.StraightEdge, Tool.Square],
            Cares = [Care.Bandsaw, Care.Dust],
        };
        Step slots = new("jig-slots", WorkPiece.Jig, lines)
        {
            Tools = [Tool.Router, Tool.StraightEdge, Tool.Clamps, Tool.Caliper],
            Gates = [GateFigures.SlotWidth(jig)],
            Cares = [Care.Router, Care.Dust],
        };
        Step layers = new("jig-brackets", WorkPiece.Jig, templates.Printed, board.Rested)
        {
            Tools = [Tool.Bandsaw, Tool.Glue, Tool.Clamps],
            Wait = Wait.Glue,
            Cares = [Care.Bandsaw, Care.Dust],
        };
        Step faces = new("jig-faces", WorkPiece.Jig, layers)
        {
            Tools = [Tool.SandingBlock, Tool.Square, Tool.Caliper],
            Gates = [GateFigures.BracketWidth(jig)],
            Cares = [Care.Dust],
        };
        Step finished = new("jig-seal", WorkPiece.Jig, slots, faces)
        {
            Tools = [Tool.Sealer, Tool.Brush],
            Wait = Wait.Finish,
            Cares = [Care.Finish],
        };
        Step set = new("jig-set", WorkPiece.Jig, finished, templates.Full)
        {
            Tools = [Tool.Rule, Tool.Spanner, Tool.FeelerGauges],
            Gates = [GateFigures.JigBoltLength(jig)],
        };
        return new JigSteps(
            new Step("use-jig", WorkPiece.EachUse, set) { Tools = [Tool.Square, Tool.Spanner] }
        );
    }
}

using Formwright.Instrument;

namespace Formwright.Jigs.Steps;

/// <summary>The steps that make the mould.</summary>
/// <param name="Fitted">Both halves stand bolted on the board.</param>
public sealed record MouldSteps(Step Fitted)
{
    internal static MouldSteps Of(
        Guitar guitar,
        GateFigures figures,
        TemplateSteps templates,
        BoardSteps board
    )
    {
        Step rough = new("layers-rough", WorkPiece.Mould, templates.Half, board.Rested)
        {
            Tools = [Tool.Bandsaw],
            Cares = [Care.Bandsaw, Care.Dust],
        };
        Step master = new("bottom-layer", WorkPiece.Mould, rough)
        {
            Tools = [Tool.Router, Tool.BearingCutter, Tool.Clamps, Tool.Caliper],
            Gates = [figures.Wall],
            Cares = [Care.Router, Care.Dust],
        };
        // A rebate of no depth or width is none; the dowels then follow the bottom layer.
        Step located = guitar.Design.Mould.Rebate is { DepthMm: > 0, WidthMm: > 0 }
            ? new Step("rebate", WorkPiece.Mould, master)
            {
                Tools = [Tool.Router, Tool.RebateCutter, Tool.Caliper, Tool.DepthGauge],
                Gates = [figures.RebateDepth, figures.RebateWidth],
                Cares = [Care.Router, Care.Dust],
            }
            : master;
        Step holes = new("dowel-holes", WorkPiece.Mould, located, board.Lines, board.Checked)
        {
            Tools = [Tool.Drill, Tool.Clamps, Tool.Square],
            Gates = [figures.DowelDiameter],
            Cares = [Care.Drill],
        };
        Step dowels = new("dowels", WorkPiece.Mould, holes)
        {
            Tools = [Tool.Saw, Tool.Mallet, Tool.SandingBlock],
            Gates = [figures.DowelLength],
        };
        Step glued = new("layers-glue", WorkPiece.Mould, dowels)
        {
            Tools = [Tool.Glue, Tool.Clamps, Tool.WaxedPaper],
            Wait = Wait.Glue,
        };
        Step trimmed = new("layers-trim", WorkPiece.Mould, glued)
        {
            Tools = [Tool.Router, Tool.BearingCutter, Tool.Square],
            Gates = [figures.MouldHeight],
            Cares = [Care.Router, Care.Dust],
        };
        Step bolts = new("bolt-holes", WorkPiece.Mould, dowels, glued)
        {
            Tools = [Tool.Drill, Tool.Clamps],
            Gates = [figures.NutDiameter],
            Cares = [Care.Drill],
        };
        Step nuts = new("bolts", WorkPiece.Mould, bolts)
        {
            Tools = [Tool.Spanner, Tool.Mallet],
            Gates = [figures.BoltLength],
        };
        Step finished = new("mould-seal", WorkPiece.Mould, trimmed, nuts)
        {
            Tools = [Tool.Sealer, Tool.Brush],
            Wait = Wait.Finish,
            Cares = [Care.Finish],
        };
        return new MouldSteps(
            new Step("mould-fit", WorkPiece.Mould, finished, board.Sealed, templates.Full)
            {
                Tools = [Tool.Spanner, Tool.Square, Tool.FeelerGauges],
            }
        );
    }
}

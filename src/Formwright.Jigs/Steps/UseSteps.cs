namespace Formwright.Jigs.Steps;

/// <summary>The steps of each use: the straight edge first, every time.</summary>
/// <param name="Last">The soundboard lies on the board.</param>
public sealed record UseSteps(Step Last)
{
    internal static UseSteps Of(GateFigures figures, BoardSteps board, MouldSteps? mould)
    {
        Step check = new(
            "use-check",
            WorkPiece.EachUse,
            mould is null ? [board.Sealed] : [board.Sealed, mould.Fitted]
        )
        {
            Tools = [Tool.StraightEdge, Tool.FeelerGauges],
            Gates = [.. figures.NutGap],
        };
        return new UseSteps(
            new Step("use-soundboard", WorkPiece.EachUse, check)
            {
                Tools = [Tool.Caliper, Tool.Spanner],
                Gates = [figures.EdgeThickness],
            }
        );
    }
}

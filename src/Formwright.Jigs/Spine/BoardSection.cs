namespace Formwright.Jigs.Spine;

/// <summary>
/// One section across board and spine: stiffness by the transformed section, curvature by the equilibrium of the two parts with their free strains
/// (Timoshenko, <i>Analysis of bi-metal thermostats</i>, J. Opt. Soc. Am. 11, 1925). The free strain runs straight through the board from face
/// to face; the spine has one of its own. Plane sections stay plane: shear lag and creep are left out.
/// </summary>
/// <param name="StiffnessNmm2">E I about the neutral axis, N·mm².</param>
/// <param name="CurvaturePerMm">Curvature from the free strains, 1/mm, positive where the board's face is crowned.</param>
public readonly record struct BoardSection(double StiffnessNmm2, double CurvaturePerMm)
{
    /// <summary>The section of a board and what is glued under it.</summary>
    /// <param name="board">The board.</param>
    /// <param name="spine">The spine; a width or depth of 0 for none.</param>
    public static BoardSection Of(in Strip board, in Strip spine)
    {
        // Heights from the glue line, up; E A, then moments about the common neutral axis.
        double eaBoard = board.ModulusMPa * board.WidthMm * board.DepthMm;
        double eaSpine = spine.ModulusMPa * spine.WidthMm * spine.DepthMm;
        double upper = board.DepthMm / 2;
        double lower = -spine.DepthMm / 2;
        double axis = ((eaBoard * upper) + (eaSpine * lower)) / (eaBoard + eaSpine);
        double ownBoard = eaBoard * board.DepthMm * board.DepthMm / 12;
        double ownSpine = eaSpine * spine.DepthMm * spine.DepthMm / 12;
        double stiffness =
            ownBoard
            + ownSpine
            + (eaBoard * (upper - axis) * (upper - axis))
            + (eaSpine * (lower - axis) * (lower - axis));
        double slope = (board.TopStrain - board.BottomStrain) / board.DepthMm;
        double moment =
            (ownBoard * slope)
            + (eaBoard * (board.TopStrain + board.BottomStrain) / 2 * (upper - axis))
            + (eaSpine * (spine.TopStrain + spine.BottomStrain) / 2 * (lower - axis));
        return new BoardSection(stiffness, moment / stiffness);
    }

    /// <summary>One of the two parts of a section.</summary>
    /// <param name="WidthMm">Width, mm.</param>
    /// <param name="DepthMm">Depth, mm.</param>
    /// <param name="ModulusMPa">Modulus along the board, MPa.</param>
    /// <param name="TopStrain">Free strain at its upper face.</param>
    /// <param name="BottomStrain">Free strain at its lower face.</param>
    public readonly record struct Strip(
        double WidthMm,
        double DepthMm,
        double ModulusMPa,
        double TopStrain,
        double BottomStrain
    );
}

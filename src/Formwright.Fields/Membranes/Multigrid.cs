namespace Formwright.Fields;

/// <summary>
/// Solves the equations of a region on nested grids (Brandt 1977; Trottenberg, Oosterlee &amp; Schüller 2001): each
/// coarser answer starts the next finer one, and every cycle takes the long waves of the error away on coarser grids.
/// </summary>
internal sealed class Multigrid
{
    // Tuned on the regions of the tests: two passes before and one after the coarse correction cost least in all.
    private const int PassesBefore = 2;
    private const int PassesAfter = 1;
    private const int CoarsestPasses = 24;
    private const int CoarsestUnknowns = 40;

    private readonly MembraneGrid[] grids;

    internal Multigrid(Region region, double stepMm)
    {
        var rows = new LineCrossings(region.Edges, stepMm, upright: false);
        var columns = new LineCrossings(region.Edges, stepMm, upright: true);
        var levels = new List<MembraneGrid> { new(region, rows, columns, stepMm) };
        while (levels[^1].Unknowns > CoarsestUnknowns)
        {
            rows = rows.Coarser();
            columns = columns.Coarser();
            levels.Add(new(region, rows, columns, 2 * levels[^1].StepMm));
        }
        if (levels.Count > 1 && levels[^1].Unknowns == 0)
        {
            levels.RemoveAt(levels.Count - 1);
        }
        grids = [.. levels];
    }

    internal MembraneGrid Finest => grids[0];

    /// <summary>The next coarser grid; its unknowns are spoilt by the cycles on the finest, see <see cref="CoarserAnswer"/>.</summary>
    internal MembraneGrid? Coarser => grids.Length > 1 ? grids[1] : null;

    /// <summary>The solved unknowns of <see cref="Coarser"/>.</summary>
    internal double[] CoarserAnswer { get; private set; } = [];

    /// <summary>Cycles spent on the finest grid.</summary>
    internal int Cycles { get; private set; }

    /// <summary>Solves -∇²u = 1 on every grid, coarse to fine, each until a cycle meets a residual within the tolerance.</summary>
    /// <returns>Largest residual on the finest grid after the last cycle.</returns>
    internal double Solve(double tolerance, int mostCycles)
    {
        for (int level = grids.Length - 1; level >= 0; level--)
        {
            MembraneGrid grid = grids[level];
            Array.Fill(grid.F, grid.StepMm * grid.StepMm);
            Array.Clear(grid.U);
            if (level + 1 < grids.Length)
            {
                GridTransfer.AddTo(grid, grids[level + 1]);
            }
            Cycles = 0;
            double residual;
            do
            {
                residual = Cycle(level);
                Cycles++;
            } while (!(residual <= tolerance) && Cycles < mostCycles);
            if (level == 1)
            {
                CoarserAnswer = [.. grid.U];
            }
        }
        return Finish(tolerance, mostCycles);
    }

    /// <summary>Cycles on until the residual that is left, not the one met on the way, is within the tolerance.</summary>
    private double Finish(double tolerance, int mostCycles)
    {
        double residual = GridTransfer.LargestResidual(Finest);
        while (!(residual <= tolerance) && Cycles < mostCycles)
        {
            Cycle(0);
            Cycles++;
            residual = GridTransfer.LargestResidual(Finest);
        }
        return residual;
    }

    /// <returns>Largest residual that the cycle met on its way down.</returns>
    private double Cycle(int level)
    {
        MembraneGrid grid = grids[level];
        if (level == grids.Length - 1)
        {
            Relax(grid, CoarsestPasses);
            return GridTransfer.LargestResidual(grid);
        }
        Relax(grid, PassesBefore);
        double residual = GridTransfer.Restrict(grid, grids[level + 1]);
        Cycle(level + 1);
        GridTransfer.AddTo(grid, grids[level + 1]);
        Relax(grid, PassesAfter);
        return residual;
    }

    private static void Relax(MembraneGrid grid, int passes)
    {
        for (int pass = 0; pass < passes; pass++)
        {
            GridPass.Relax(grid, 0);
            GridPass.Relax(grid, 1);
        }
    }
}

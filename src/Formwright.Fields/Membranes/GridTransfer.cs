namespace Formwright.Fields;

/// <summary>What goes between a grid and the next coarser one: residuals down by full weighting, corrections up bilinearly.</summary>
internal static class GridTransfer
{
    /// <summary>Puts the residual of the fine grid into the right-hand side of the coarse one and clears the coarse unknowns.</summary>
    /// <returns>Largest residual over f, both in the equations' own units: the share of 1 by which -∇²u = 1 is missed.</returns>
    internal static double Restrict(MembraneGrid fine, MembraneGrid coarse)
    {
        Array.Clear(coarse.U);
        var residual = new ResidualRows(fine);
        var blended = new double[fine.Columns];
        int shift = (2 * coarse.FirstX) - fine.FirstX;
        int row = -1;
        foreach (MembraneGrid.Span span in coarse.Spans)
        {
            if (span.Row != row)
            {
                row = span.Row;
                int middle = (2 * (coarse.FirstY + row)) - fine.FirstY;
                GridPass.Blend(
                    residual[middle - 1],
                    residual[middle],
                    residual[middle + 1],
                    blended
                );
            }
            int start = row * coarse.Columns;
            for (int i = span.From; i < span.To; i++)
            {
                int k = (2 * (i - start)) + shift;
                coarse.F[i] = blended[k] + ((blended[k - 1] + blended[k + 1]) * 0.5);
            }
        }
        return residual.Largest / (fine.StepMm * fine.StepMm);
    }

    /// <summary>Adds the coarse unknowns, bilinear between nodes, to the fine ones.</summary>
    internal static void AddTo(MembraneGrid fine, MembraneGrid coarse)
    {
        var between = new double[coarse.Columns];
        ReadOnlySpan<double> line = default;
        int row = -1;
        foreach (MembraneGrid.Span span in fine.Spans)
        {
            if (span.Row != row)
            {
                row = span.Row;
                int lattice = fine.FirstY + row;
                int below = (lattice >> 1) - coarse.FirstY;
                ReadOnlySpan<double> lower = coarse.U.AsSpan(
                    below * coarse.Columns,
                    coarse.Columns
                );
                if ((lattice & 1) == 0)
                {
                    line = lower;
                }
                else
                {
                    ReadOnlySpan<double> upper = coarse.U.AsSpan(
                        (below + 1) * coarse.Columns,
                        coarse.Columns
                    );
                    for (int i = 0; i < between.Length; i++)
                    {
                        between[i] = (lower[i] + upper[i]) * 0.5;
                    }
                    line = between;
                }
            }
            int start = row * fine.Columns;
            for (int i = span.From; i < span.To; i++)
            {
                int lattice = fine.FirstX + i - start;
                int left = (lattice >> 1) - coarse.FirstX;
                fine.U[i] += (lattice & 1) == 0 ? line[left] : (line[left] + line[left + 1]) * 0.5;
            }
        }
    }

    /// <summary>Largest residual of a grid, as <see cref="Restrict"/> returns it.</summary>
    internal static double LargestResidual(MembraneGrid grid)
    {
        var residual = new ResidualRows(grid);
        for (int row = 0; row < grid.Rows; row++)
        {
            _ = residual[row];
        }
        return residual.Largest / (grid.StepMm * grid.StepMm);
    }
}

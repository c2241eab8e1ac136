namespace Formwright.Fields;

/// <summary>Residuals of a grid row by row, asked for in rising order; three rows are kept, so that none is computed twice.</summary>
internal sealed class ResidualRows(MembraneGrid grid)
{
    private readonly double[][] kept =
    [
        new double[grid.Columns],
        new double[grid.Columns],
        new double[grid.Columns],
    ];
    private readonly int[] keptRow = [-1, -1, -1];
    private int nextSpan;

    /// <summary>Largest of the residuals computed so far, without sign; not a number if any is not.</summary>
    internal double Largest { get; private set; }

    internal ReadOnlySpan<double> this[int row]
    {
        get
        {
            double[] values = kept[row % 3];
            if (keptRow[row % 3] != row)
            {
                keptRow[row % 3] = row;
                Array.Clear(values);
                Fill(row, values);
            }
            return values;
        }
    }

    private void Fill(int row, double[] values)
    {
        MembraneGrid.Span[] spans = grid.Spans;
        while (nextSpan < spans.Length && spans[nextSpan].Row < row)
        {
            nextSpan++;
        }
        for (; nextSpan < spans.Length && spans[nextSpan].Row == row; nextSpan++)
        {
            GridPass.Residual(grid, spans[nextSpan], values);
        }
        Largest = Math.Max(Largest, GridPass.Largest(values));
    }
}

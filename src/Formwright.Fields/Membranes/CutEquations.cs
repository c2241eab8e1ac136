namespace Formwright.Fields;

/// <summary>
/// The Shortley-Weller equations of the cut nodes of one colour:
/// diagonal · u = f + Σ weight · neighbour. An arm that ends on the edge has no weight, since u = 0 there.
/// </summary>
internal sealed class CutEquations
{
    private readonly int columns;
    private readonly int[] index;
    private readonly Equation[] equation;

    internal CutEquations(List<CutNode> nodes, MembraneGrid grid, int colour)
    {
        columns = grid.Columns;
        CutNode[] mine =
        [
            .. nodes
                .Where(node =>
                    grid.Colour(node.Index % grid.Columns, node.Index / grid.Columns) == colour
                )
                .OrderBy(node => node.Index),
        ];
        index = [.. mine.Select(node => node.Index)];
        equation = [.. mine.Select(Of)];
    }

    /// <summary>Solves each equation for its own node.</summary>
    internal void Relax(double[] u, double[] f)
    {
        for (int i = 0; i < index.Length; i++)
        {
            int at = index[i];
            u[at] = (f[at] + Neighbours(u, i)) / equation[i].Diagonal;
        }
    }

    /// <summary>Writes f + Σ weight · neighbour - diagonal · u for the nodes of the colour within a range of the array.</summary>
    internal void Residual(double[] u, double[] f, Span<double> residual, int from, int to)
    {
        int i = Array.BinarySearch(index, from);
        for (i = i < 0 ? ~i : i; i < index.Length && index[i] < to; i++)
        {
            int at = index[i];
            residual[at - from] = f[at] + Neighbours(u, i) - (equation[i].Diagonal * u[at]);
        }
    }

    private double Neighbours(double[] u, int i)
    {
        int at = index[i];
        ref readonly Equation e = ref equation[i];
        return ((e.West * u[at - 1]) + (e.East * u[at + 1]))
            + ((e.South * u[at - columns]) + (e.North * u[at + columns]));
    }

    private static Equation Of(CutNode n)
    {
        double across = n.West + n.East;
        double up = n.South + n.North;
        return new(
            n.West < 1 ? 0 : 2 / (n.West * across),
            n.East < 1 ? 0 : 2 / (n.East * across),
            n.South < 1 ? 0 : 2 / (n.South * up),
            n.North < 1 ? 0 : 2 / (n.North * up),
            (2 / (n.West * n.East)) + (2 / (n.South * n.North))
        );
    }

    private readonly record struct Equation(
        double West,
        double East,
        double South,
        double North,
        double Diagonal
    );
}

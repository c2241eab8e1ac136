using Formwright.Fields.Sparse;

namespace Formwright.Plates.Tests.Sparse;

/// <summary>The five-point difference matrix on an m × n grid of inner points, whose eigenvalues are known in closed form.</summary>
internal sealed class Grid
{
    internal Grid(int m, int n)
    {
        Columns = m;
        var pairs = new List<int[]>();
        for (int i = 0; i < m * n; i++)
        {
            if (i % m < m - 1)
            {
                pairs.Add([i, i + 1]);
            }

            if (i / m < n - 1)
            {
                pairs.Add([i, i + m]);
            }
        }

        Pattern = SymmetricPattern.FromGroups(m * n, pairs);
        X = [.. Enumerable.Range(0, m * n).Select(i => (double)(i % m))];
        Y = [.. Enumerable.Range(0, m * n).Select(i => (double)(i / m))];
        Order = NestedDissection.Order(Pattern, X, Y);
        Dirichlet = new(Pattern);
        Neumann = new(Pattern);
        Unit = new(Pattern);
        for (int i = 0; i < m * n; i++)
        {
            Dirichlet.Add(i, i, 4);
            Unit.Add(i, i, 1);
        }

        foreach (int[] pair in pairs)
        {
            Dirichlet.Add(pair[0], pair[1], -1);
            Neumann.AddBlock(pair, [1, -1, -1, 1]);
        }
    }

    internal int Columns { get; }

    internal SymmetricPattern Pattern { get; }

    internal double[] X { get; }

    internal double[] Y { get; }

    internal EliminationOrder Order { get; }

    /// <summary>Eigenvalues 4 - 2cos(iπ/(m+1)) - 2cos(jπ/(n+1)).</summary>
    internal SymmetricMatrix Dirichlet { get; }

    /// <summary>Eigenvalues 4 - 2cos(iπ/m) - 2cos(jπ/n), i and j from 0: singular.</summary>
    internal SymmetricMatrix Neumann { get; }

    internal SymmetricMatrix Unit { get; }
}

using CsCheck;
using Formwright.Fields.Sparse;
using Formwright.Testing;

namespace Formwright.Plates.Tests.Sparse;

public sealed class SparseFactorTests
{
    [Fact]
    public void SolvesTheGridToRounding()
    {
        var grid = new Grid(61, 47);
        SparseFactor factor = SparseFactor.Of(grid.Dirichlet, grid.Order);
        double[] x = [.. Enumerable.Range(0, grid.Pattern.Size).Select(i => Math.Sin(i))];
        double[] solved = factor.Solve(grid.Dirichlet.Multiply(x));
        Assert.Equal(0, factor.NegativePivots);
        Assert.True(x.Zip(solved).Max(pair => Math.Abs(pair.First - pair.Second)) < 1e-11);
    }

    [Fact]
    public void FillGrowsAsDissectionPromises()
    {
        // George 1973: fill of an n × n grid grows as n² log n. The factor between two sizes is 4 · (1 + log 2 / log n), not 8 as for a band.
        long Fill(int n)
        {
            var grid = new Grid(n, n);
            return SparseFactor.Of(grid.Dirichlet, grid.Order).Count;
        }

        double growth = (double)Fill(128) / Fill(64);
        Assert.InRange(growth, 4, 5.2);
    }

    [Fact]
    public void SolvesAnyDiagonallyDominantMatrix() =>
        Gen.Select(Gen.Int[1, 90], Gen.Int[0, 400], Gen.Int[0, 1_000_000])
            .Holds(
                (size, edges, seed) =>
                {
                    var random = new Random(seed);
                    int[][] pairs =
                    [
                        .. Enumerable
                            .Range(0, edges)
                            .Select(_ => new[] { random.Next(size), random.Next(size) }),
                    ];
                    var pattern = SymmetricPattern.FromGroups(size, pairs);
                    double[] x = [.. Enumerable.Range(0, size).Select(_ => random.NextDouble())];
                    double[] y = [.. Enumerable.Range(0, size).Select(_ => random.NextDouble())];
                    var matrix = new SymmetricMatrix(pattern);
                    int negative = 0;
                    for (int i = 0; i < size; i++)
                    {
                        // Signs mixed: strictly dominant rows, so as many negative eigenvalues as negative diagonal entries (Gershgorin).
                        double sign = random.Next(2) == 0 ? 1 : -1;
                        negative += sign < 0 ? 1 : 0;
                        matrix.Add(i, i, sign * (edges + 1));
                    }

                    foreach (int[] pair in pairs.Where(pair => pair[0] != pair[1]))
                    {
                        matrix.Add(pair[0], pair[1], (2 * random.NextDouble()) - 1);
                    }

                    SparseFactor factor = SparseFactor.Of(
                        matrix,
                        NestedDissection.Order(pattern, x, y)
                    );
                    double[] solved = factor.Solve(matrix.Multiply(x));
                    Assert.Equal(negative, factor.NegativePivots);
                    Assert.True(x.Zip(solved).All(p => Math.Abs(p.First - p.Second) < 1e-12));
                },
                iter: 200
            );

    [Fact]
    public void TheOrderIsAPermutationAndItsTreeHoldsAllFill()
    {
        var grid = new Grid(33, 20);
        Assert.Equal(Enumerable.Range(0, 660), grid.Order.Unknowns.Order());
        int[] blockOf = new int[660];
        for (int block = 0; block < grid.Order.Blocks.Length; block++)
        {
            (int start, int count, int parent) = grid.Order.Blocks[block];
            Array.Fill(blockOf, block, start, count);
            Assert.True(parent == -1 ? block == grid.Order.Blocks.Length - 1 : parent > block);
        }

        int[] place = new int[660];
        for (int i = 0; i < 660; i++)
        {
            place[grid.Order.Unknowns[i]] = i;
        }

        for (int column = 0; column < 660; column++)
        {
            for (int at = grid.Pattern.Starts[column]; at < grid.Pattern.Starts[column + 1]; at++)
            {
                int low = blockOf[Math.Min(place[column], place[grid.Pattern.Rows[at]])];
                int high = blockOf[Math.Max(place[column], place[grid.Pattern.Rows[at]])];
                while (low != high && low >= 0)
                {
                    low = grid.Order.Blocks[low].Parent;
                }

                Assert.Equal(high, low);
            }
        }
    }

    [Fact]
    public void ASingularMatrixIsReported()
    {
        var pattern = SymmetricPattern.FromGroups(
            2,
            [
                [0, 1],
            ]
        );
        var matrix = new SymmetricMatrix(pattern);
        matrix.AddBlock([0, 1], [1, -1, -1, 1]);
        EliminationOrder order = NestedDissection.Order(pattern, [0, 1], [0, 0]);
        Assert.Throws<ArithmeticException>(() => SparseFactor.Of(matrix, order));
        Assert.Throws<ArgumentException>(() => matrix.Add(0, 5, 1));
        Assert.Throws<ArgumentException>(() =>
            NestedDissection.Order(pattern, [0, double.NaN], [0, 0])
        );
    }
}

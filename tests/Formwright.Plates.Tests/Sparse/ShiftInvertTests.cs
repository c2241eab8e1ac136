using Formwright.Fields.Sparse;

namespace Formwright.Plates.Tests.Sparse;

public sealed class ShiftInvertTests
{
    [Theory]
    [InlineData(40, 40, 20)] // square: double eigenvalues
    [InlineData(57, 31, 20)]
    [InlineData(30, 30, 60)]
    public void MeetsTheGridsEigenvalues(int m, int n, int count)
    {
        var grid = new Grid(m, n);
        EigenPairs found = ShiftInvert.Lowest(grid.Dirichlet, grid.Unit, grid.Order, count);
        double[] exact =
        [
            .. Enumerable
                .Range(1, m)
                .SelectMany(i =>
                    Enumerable
                        .Range(1, n)
                        .Select(j =>
                            4
                            - (2 * Math.Cos(i * Math.PI / (m + 1)))
                            - (2 * Math.Cos(j * Math.PI / (n + 1)))
                        )
                )
                .Order()
                .Take(count),
        ];
        Assert.True(found.Converged);
        Assert.Equal(0, found.Missed);
        for (int i = 0; i < count; i++)
        {
            Assert.Equal(exact[i], found.Values[i], 1e-11 * exact[i]);
            Assert.InRange(found.Residuals[i], 0, 1e-8);
        }
    }

    [Fact]
    public void ASingularMatrixIsServedByAShift()
    {
        var grid = new Grid(29, 29);
        EigenPairs found = ShiftInvert.Lowest(grid.Neumann, grid.Unit, grid.Order, 4, shift: -0.01);
        double second = 2 - (2 * Math.Cos(Math.PI / 29));
        Assert.Equal(0, found.Values[0], 1e-13);
        Assert.Equal(second, found.Values[1], 1e-12);
        Assert.Equal(second, found.Values[2], 1e-12);
        Assert.Equal(2 * second, found.Values[3], 1e-12);
        Assert.Equal(0, found.Missed);
    }

    [Fact]
    public void VectorsAreOrthonormalInTheMass()
    {
        var grid = new Grid(24, 17);
        EigenPairs found = ShiftInvert.Lowest(grid.Dirichlet, grid.Unit, grid.Order, 12);
        for (int i = 0; i < 12; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double product = found
                    .Vectors[i]
                    .Zip(found.Vectors[j])
                    .Sum(pair => pair.First * pair.Second);
                Assert.Equal(i == j ? 1 : 0, product, 1e-10);
            }
        }
    }

    [Fact]
    public void TheSameInputGivesTheSameBits()
    {
        var grid = new Grid(24, 17);
        EigenPairs once = ShiftInvert.Lowest(grid.Dirichlet, grid.Unit, grid.Order, 6);
        EigenPairs twice = ShiftInvert.Lowest(grid.Dirichlet, grid.Unit, grid.Order, 6);
        Assert.Equal(once.Values.AsEnumerable(), twice.Values);
        Assert.Equal(once.Vectors[5], twice.Vectors[5]);
    }
}

using Xunit;

namespace Formwright.Fields.Tests;

public sealed class MembraneTests
{
    [Fact]
    public void Unit_square_has_the_known_height_and_integral()
    {
        Region square = Region.Of([new(0, 0), new(1, 0), new(1, 1), new(0, 1)]);
        MembraneSolution membrane = Membrane.Solve(square, 1.0 / 256);
        // Series solution; values C in sources: max .0736713532815, integral .0351442537388.
        Assert.Equal(.0736713532815, membrane.Field.Peak.HeightMm, 1e-6);
        Assert.Equal(.0351442537388, membrane.Integral, 4e-6);
        Assert.True(membrane.Converged);
    }
}

using Xunit;

namespace Formwright.Fields.Tests;

public sealed class MembraneValidatorTests
{
    [Fact]
    public void A_guitar_holds()
    {
        MembraneCheck check = MembraneValidator.Check(
            Membrane.Solve(Shapes.Guitar(12).BeyondX(106), 1)
        );
        Assert.True(check.HoldsWithin(3e-3), check.ToString());
        Assert.InRange(check.MeanValue, 0, 1e-4);
        Assert.InRange(check.Edge, 0, 1e-4);
        Assert.InRange(check.Mirror!.Value, 0, 1e-9);
    }

    [Fact]
    public void A_disc_is_perfect_and_reaches_both_bounds()
    {
        MembraneCheck check = MembraneValidator.Check(Membrane.Solve(Shapes.Ellipse(150, 150), 3));
        Assert.True(check.HoldsWithin(1e-5), check.ToString());
        Assert.Equal(1, check.BelowCeiling, 1e-6);
    }

    [Fact]
    public void What_it_finds_falls_with_the_square_of_the_step()
    {
        Region region = Shapes.Wavy(150, .03, 5, .2, new(.4, .7));
        MembraneCheck coarse = MembraneValidator.Check(Membrane.Solve(region, 8));
        MembraneCheck fine = MembraneValidator.Check(Membrane.Solve(region, 1));
        Assert.Null(coarse.Mirror);
        Assert.InRange(coarse.MeanValue / fine.MeanValue, 30, 300);
        Assert.InRange(coarse.Flux / fine.Flux, 20, 500);
        Assert.True(coarse.Edge > 20 * fine.Edge);
    }

    [Fact]
    public void It_does_not_pass_what_is_too_coarse()
    {
        Region region = Shapes.Guitar(12).BeyondX(106);
        Assert.False(MembraneValidator.Check(Membrane.Solve(region, 40)).HoldsWithin(3e-3));
    }
}

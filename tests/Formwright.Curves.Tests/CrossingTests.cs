using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

/// <summary>Where lines cross a chain.</summary>
public sealed class CrossingTests
{
    [Fact]
    public void Crossings_are_on_the_line_and_none_is_missed() =>
        (
            from chain in Models.Chains
            from share in Gen.Double[0.01, 0.99]
            select (chain, share)
        ).Holds(
            given =>
            {
                (Chain chain, double share) = given;
                double x = chain.Box.Min.X + (share * chain.Box.WidthMm);
                IReadOnlyList<ChainPoint> found = chain.CrossingsAtX(x);
                Assert.All(found, place => Assert.Equal(x, place.Position.X, 1e-9));
                Assert.All(
                    found,
                    place =>
                        Assert.True(
                            chain.At(place.ArcLengthMm).Position.DistanceTo(place.Position) < 1e-9
                        )
                );
                int changes = 0;
                const int Steps = 2000;
                for (int i = 0; i < Steps; i++)
                {
                    double before = chain.At(chain.LengthMm * i / Steps).Position.X - x;
                    double after = chain.At(chain.LengthMm * (i + 1) / Steps).Position.X - x;
                    changes += before * after < 0 ? 1 : 0;
                }

                Assert.True(
                    found.Count >= changes,
                    $"{found.Count} of {changes} at {x}: {Models.Show(chain)}"
                );
            },
            iter: 100
        );

    [Fact]
    public void A_slanted_line_crosses_as_an_upright_one_does_after_turning() =>
        (
            from chain in Models.Chains
            from share in Gen.Double[0.05, 0.95]
            from turn in Gen.Double[-3, 3]
            select (chain, share, turn)
        ).Holds(
            given =>
            {
                (Chain chain, double share, double turn) = given;
                Point place = chain.At(share * chain.LengthMm).Position + new Vector(0.3, 0.2);
                IReadOnlyList<ChainPoint> slanted = chain.CrossingsWith(place, turn);
                Chain upright = chain.Rotated((0.5 * Math.PI) - turn, place);
                Assert.Equal(
                    upright.CrossingsAtX(place.X).Select(found => found.ArcLengthMm),
                    slanted.Select(found => found.ArcLengthMm),
                    (a, b) => Math.Abs(a - b) < 1e-6
                );
            },
            iter: 100
        );
}

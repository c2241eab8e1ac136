using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>How properties are tried.</summary>
public sealed class PropertyTests
{
    [Fact]
    public void Its_name_alone_decides_the_cases()
    {
        Assert.Equal(Drawn("A"), Drawn("A"));
        Assert.NotEqual(Drawn("A"), Drawn("B"));
        Assert.True(Drawn("A").Distinct().Count() > 90);
    }

    [Fact]
    public void What_fails_is_made_smaller_and_told_with_its_seed()
    {
        List<int> failed = [];
        CsCheckException told = Assert.Throws<CsCheckException>(() =>
            Gen.Int[0, 1_000_000]
                .Holds(number =>
                {
                    if (number >= 1000)
                    {
                        failed.Add(number);
                    }

                    return number < 1000;
                })
        );
        Assert.Contains("seed", told.Message, StringComparison.OrdinalIgnoreCase);
        Assert.True(failed[^1] < failed[0], $"from {failed[0]} to {failed[^1]}");
    }

    private static List<int> Drawn(string name)
    {
        List<int> drawn = [];
        Gen.Int.Holds(drawn.Add, name: name);
        return drawn;
    }
}

using Xunit;

namespace Formwright.Cli.Tests;

/// <summary>What a command left behind on the terminal.</summary>
public sealed record Outcome(int Status, string Out, string Error)
{
    /// <summary>Asserts the status, and that no stack trace came out.</summary>
    public Outcome Ended(int status)
    {
        Assert.True(Status == status, $"ended with {Status}, not {status}\n{Out}\n{Error}");
        Assert.DoesNotContain("   at ", Out + Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Unhandled", Error, StringComparison.Ordinal);
        return this;
    }
}

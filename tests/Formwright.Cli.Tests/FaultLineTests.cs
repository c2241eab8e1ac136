using Formwright.Words;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class FaultLineTests
{
    [Fact]
    public void Failures_outside_are_told_in_plain_words()
    {
        using Language english = Language.Use("en");
        Assert.Equal(
            "No permission to read or write '/a/b'.",
            FaultLine.Of(new UnauthorizedAccessException("Access to the path '/a/b' is denied."))
        );
        Assert.Equal(
            "There is no folder for '/a/b'.",
            FaultLine.Of(
                new DirectoryNotFoundException("Could not find a part of the path '/a/b'.")
            )
        );
        Assert.Equal(
            "The disk is full. Nothing was written.",
            FaultLine.Of(new IOException("No space left on device", 28))
        );
        Assert.Equal(
            "The disk or the system refused: It broke again",
            FaultLine.Of(new IOException("It broke\nagain"))
        );
        Assert.Equal(
            "Stopped. Nothing was written.",
            FaultLine.Of(new OperationCanceledException())
        );
        Assert.Equal(
            "The disk is full. Nothing was written.",
            FaultLine.Of(new AggregateException(new IOException("x", 28), new IOException("y")))
        );
    }

    [Theory]
    [InlineData("en", "This is our mistake, not yours.")]
    [InlineData("es", "Es un fallo nuestro, no suyo.")]
    public void Our_own_mistake_is_one_line_that_says_what_to_report(string language, string start)
    {
        using Language spoken = Language.Use(language);
        string line = "";
        try
        {
            _ = ((string?)null)!.Length;
        }
        catch (NullReferenceException fault)
        {
            line = FaultLine.Of(fault);
        }

        Assert.StartsWith(start, line, StringComparison.Ordinal);
        Assert.Contains("NullReferenceException", line, StringComparison.Ordinal);
        Assert.Contains("FaultLineTests", line, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', line);
    }

    [Fact]
    public void A_fault_while_a_command_runs_ends_with_status_3()
    {
        using StringWriter error = new();
        int status = CommandLine.Run(["--help"], new Streams(new Broken(), error, false));
        Assert.Equal(3, status);
        Assert.Equal(
            "The disk or the system refused: the pipe is closed\n",
            error.ToString().ReplaceLineEndings("\n")
        );
    }

    [Fact]
    public void Slow_work_is_told_after_a_second_only()
    {
        using StringWriter error = new();
        Streams streams = new(TextWriter.Null, error, false);
        using (SlowNotice notice = new(streams, "first"))
        {
            notice.Say("second");
            Assert.Equal("", error.ToString());
            for (int i = 0; i < 500 && error.ToString().Length == 0; i++)
            {
                Thread.Sleep(20);
            }
        }

        Assert.Equal("second\n", error.ToString().ReplaceLineEndings("\n"));
    }

    private sealed class Broken : StringWriter
    {
        public override void Flush() => throw new IOException("the pipe is closed");
    }
}

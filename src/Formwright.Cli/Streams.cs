using System.Text;

namespace Formwright.Cli;

/// <summary>Where a command writes: what was asked for to <paramref name="Out"/>, everything else to <paramref name="Error"/>.</summary>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="ErrorIsTerminal">Whether a person watches <paramref name="Error"/>, so that a line may be written over.</param>
public sealed record Streams(TextWriter Out, TextWriter Error, bool ErrorIsTerminal)
{
    /// <summary>The streams of this process, UTF-8 whatever the terminal's locale.</summary>
    public static Streams OfProcess() =>
        new(
            Writer(Console.OpenStandardOutput(), autoFlush: false),
            Writer(Console.OpenStandardError(), autoFlush: true),
            !Console.IsErrorRedirected
        );

    private static StreamWriter Writer(Stream stream, bool autoFlush) =>
        new(stream, new UTF8Encoding(false)) { AutoFlush = autoFlush, NewLine = "\n" };
}

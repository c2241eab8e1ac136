using Formwright.Words;

namespace Formwright.Cli;

/// <summary>The texts of this assembly.</summary>
public static class CliWords
{
    public static Wording Of { get; } = Wording.Of(typeof(CliWords).Assembly, "Formwright.Cli");
}

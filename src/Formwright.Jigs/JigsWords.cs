using Formwright.Words;

namespace Formwright.Jigs;

/// <summary>The texts of this assembly.</summary>
public static class JigsWords
{
    public static Wording Of { get; } = Wording.Of(typeof(JigsWords).Assembly);
}

using Formwright.Words;

namespace Formwright.Trace;

/// <summary>The texts of this assembly.</summary>
public static class TraceWords
{
    public static Wording Of { get; } = Wording.Of(typeof(TraceWords).Assembly);
}

using Formwright.Words;

namespace Formwright.Instrument;

/// <summary>The texts of this assembly.</summary>
public static class InstrumentWords
{
    public static Wording Of { get; } = Wording.Of(typeof(InstrumentWords).Assembly);
}

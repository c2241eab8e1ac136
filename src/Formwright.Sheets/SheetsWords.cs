using Formwright.Words;

namespace Formwright.Sheets;

/// <summary>The texts of this assembly.</summary>
public static class SheetsWords
{
    public static Wording Of { get; } = Wording.Of(typeof(SheetsWords).Assembly);
}

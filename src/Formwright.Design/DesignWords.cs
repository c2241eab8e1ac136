using Formwright.Words;

namespace Formwright.Design;

/// <summary>The texts of this assembly.</summary>
public static class DesignWords
{
    public static Wording Of { get; } = Wording.Of(typeof(DesignWords).Assembly);
}

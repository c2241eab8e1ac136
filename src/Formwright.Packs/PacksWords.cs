using Formwright.Words;

namespace Formwright.Packs;

/// <summary>The texts of this assembly.</summary>
public static class PacksWords
{
    public static Wording Of { get; } = Wording.Of(typeof(PacksWords).Assembly);
}

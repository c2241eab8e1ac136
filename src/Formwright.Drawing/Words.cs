using Formwright.Words;

namespace Formwright.Drawing;

/// <summary>The texts of this project.</summary>
internal static class Words
{
    private static readonly Wording Texts = Wording.Of(typeof(Words).Assembly);

    public static string Of(string key) => Texts[key];

    public static string Format(string key, params object?[] values) => Texts.Format(key, values);
}

using Formwright.Words;

namespace Formwright.Web;

/// <summary>The texts of this assembly.</summary>
public static class WebWords
{
    public static Wording Of { get; } = Wording.Of(typeof(WebWords).Assembly);
}

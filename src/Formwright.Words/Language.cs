using System.Globalization;

namespace Formwright.Words;

/// <summary>Speaks another language for a while: texts and figures follow it until it is disposed, also on the threads that this one starts.</summary>
public sealed class Language : IDisposable
{
    /// <summary>The languages that there are texts in.</summary>
    public static IReadOnlyList<string> Names { get; } = ["en", "es"];

    private readonly CultureInfo figures = CultureInfo.CurrentCulture;
    private readonly CultureInfo words = CultureInfo.CurrentUICulture;

    private Language(CultureInfo culture)
    {
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }

    /// <summary>Texts and figures of <paramref name="name"/>.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There are no texts in that language.</exception>
    public static Language Use(string name) =>
        Names.Contains(name)
            ? new Language(CultureInfo.GetCultureInfo(name))
            : throw new ArgumentException($"No texts in '{name}'.", nameof(name));

    public void Dispose()
    {
        CultureInfo.CurrentCulture = figures;
        CultureInfo.CurrentUICulture = words;
    }
}

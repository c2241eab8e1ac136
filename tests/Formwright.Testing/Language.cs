using System.Globalization;

namespace Formwright.Testing;

/// <summary>Runs a part of a test in another language; give it back by disposing.</summary>
public sealed class Language : IDisposable
{
    private readonly CultureInfo figures = CultureInfo.CurrentCulture;
    private readonly CultureInfo words = CultureInfo.CurrentUICulture;

    private Language(CultureInfo culture)
    {
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }

    /// <summary>Texts and figures of <paramref name="name"/>: <c>en</c> or <c>es</c>.</summary>
    public static IDisposable Use(string name) => new Language(CultureInfo.GetCultureInfo(name));

    public void Dispose()
    {
        CultureInfo.CurrentCulture = figures;
        CultureInfo.CurrentUICulture = words;
    }
}

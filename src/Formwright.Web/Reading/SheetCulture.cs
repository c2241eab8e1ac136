using System.Globalization;
using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Web.Reading;

/// <summary>Sheets speak the language of their design, not that of the page; the running work's culture comes back at the end.</summary>
internal sealed class SheetCulture : IDisposable
{
    private readonly CultureInfo before = CultureInfo.CurrentCulture;
    private readonly CultureInfo beforeUI = CultureInfo.CurrentUICulture;

    private SheetCulture(string language)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(language);
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);
    }

    public static SheetCulture Of(InstrumentDesign design) =>
        new(design.Sheets.Language == SheetLanguage.Es ? "es" : "en");

    public void Dispose()
    {
        CultureInfo.CurrentCulture = before;
        CultureInfo.CurrentUICulture = beforeUI;
    }
}

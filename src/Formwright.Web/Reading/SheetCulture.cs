using System.Globalization;
using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Web.Reading;

/// <summary>Sheets are drawn in a culture of their own; the running work's comes back at the end.</summary>
internal sealed class SheetCulture : IDisposable
{
    private readonly CultureInfo before = CultureInfo.CurrentCulture;
    private readonly CultureInfo beforeUI = CultureInfo.CurrentUICulture;

    public SheetCulture(CultureInfo culture)
    {
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture.Name);
    }

    /// <summary>The culture of a design's own sheets: they speak its language, not that of the page.</summary>
    public static SheetCulture Of(InstrumentDesign design) => new(CultureOf(design));

    public static CultureInfo CultureOf(InstrumentDesign design) =>
        CultureInfo.GetCultureInfo(design.Sheets.Language == SheetLanguage.Es ? "es" : "en");

    public void Dispose()
    {
        CultureInfo.CurrentCulture = before;
        CultureInfo.CurrentUICulture = beforeUI;
    }
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[sheets]</c>: how sheets are printed.</summary>
/// <param name="Paper">Paper of small sheets.</param>
/// <param name="Language">Language of the sheets.</param>
/// <param name="PrintScaleX">What the 100 mm bar across the page measures on this printer, divided by 100.</param>
/// <param name="PrintScaleY">The same for the bar along the page.</param>
public sealed record SheetsDesign(
    PaperSize Paper,
    SheetLanguage Language,
    double PrintScaleX,
    double PrintScaleY
)
{
    internal static SheetsDesign Read(TableReader table) =>
        new(
            table.Choice("paper", PaperSize.A4),
            table.Choice("language", SheetLanguage.En),
            table.Number("print_scale_x", 1, 0.9, 1.1, ""),
            table.Number("print_scale_y", 1, 0.9, 1.1, "")
        );
}

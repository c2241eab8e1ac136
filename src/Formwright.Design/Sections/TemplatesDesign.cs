using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[templates]</c>: the outline as half, full and mating templates.</summary>
/// <param name="WidthMm">Width of a template's band, mm.</param>
/// <param name="ThicknessMm">Thickness of the template stock, mm.</param>
public sealed record TemplatesDesign(double WidthMm, double ThicknessMm)
{
    internal static TemplatesDesign Read(TableReader table) =>
        new(table.Length("width", 50, 10, 150), table.Length("thickness", 6, 0.3, 25));
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>A feature of the outline where it runs along the centreline: a bout or the waist.</summary>
/// <param name="AtMm">Station u from the heel, mm.</param>
/// <param name="WidthMm">Full width there, mm.</param>
/// <param name="RadiusMm">Radius there, mm, or null to let the fair curve choose.</param>
public sealed record BoutDesign(double AtMm, double WidthMm, double? RadiusMm)
{
    internal static BoutDesign Read(TableReader table) =>
        new(
            table.Length("at", null, 1, 1500),
            table.Length("width", null, 20, 1000),
            table.OptionalLength("radius", 5, 5000)
        );
}

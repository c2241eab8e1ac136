using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[harmonic_bars]]</c>: a bar across the soundboard, square to the centreline.</summary>
/// <param name="AtMm">Station of its middle from the heel, mm.</param>
/// <param name="WidthMm">Thickness along the centreline, mm.</param>
/// <param name="HeightMm">Height over the soundboard, mm.</param>
public sealed record HarmonicBarDesign(double AtMm, double WidthMm, double HeightMm)
{
    internal static HarmonicBarDesign Read(TableReader table) =>
        new(
            table.Length("at", null, 1, 1500),
            table.Length("width", 6, 2, 30),
            table.Length("height", 17, 2, 60)
        );
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[back.bars]]</c>: a bar across the back, square to the centreline.</summary>
/// <param name="AtMm">Station of its middle from the heel, mm.</param>
/// <param name="WidthMm">Thickness along the centreline, mm.</param>
/// <param name="HeightMm">Height in its middle, mm.</param>
public sealed record BackBarDesign(double AtMm, double WidthMm, double HeightMm)
{
    internal static BackBarDesign Read(TableReader table) =>
        new(
            table.Length("at", null, 1, 1500),
            table.Length("width", 7, 2, 30),
            table.Length("height", 15, 2, 60)
        );
}

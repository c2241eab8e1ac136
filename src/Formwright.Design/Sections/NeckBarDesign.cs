using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[neck.bar]</c>: a reinforcement bar let into the neck's face under the fingerboard, from the nut to the join.</summary>
/// <param name="WidthMm">Width across the neck, mm; 0 for no bar.</param>
/// <param name="DepthMm">Depth into the neck, mm.</param>
/// <param name="BelowFaceMm">Wood left between the neck's face and the bar, mm.</param>
/// <param name="ModulusGPa">Its modulus along the neck, GPa.</param>
public sealed record NeckBarDesign(
    double WidthMm,
    double DepthMm,
    double BelowFaceMm,
    double ModulusGPa
)
{
    /// <summary>Whether there is a bar.</summary>
    public bool IsPresent => WidthMm > 0 && DepthMm > 0;

    internal static NeckBarDesign Read(TableReader table) =>
        new(
            table.Length("width", 0, 0, 30),
            table.Length("depth", 10, 0, 30),
            table.Length("below_face", 0, 0, 30),
            table.Number("modulus", 120, 1, 400, "GPa")
        );
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[soundhole]</c>: a round hole on the centreline.</summary>
/// <param name="AtMm">Station of its centre from the heel, mm.</param>
/// <param name="RadiusMm">Its radius, mm.</param>
public sealed record SoundholeDesign(double AtMm, double RadiusMm)
{
    internal static SoundholeDesign Read(TableReader table) =>
        new(table.Length("at", null, 1, 1500), table.Length("radius", null, 5, 200));
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[dome]</c>: how far and how the soundboard is domed.</summary>
/// <param name="Kind">Shape of the dome.</param>
/// <param name="HeightMm">Greatest height over the rim on the board, mm; 0 for a flat board.</param>
/// <param name="FreeMm">Greatest height that it springs back to when the box leaves the board, mm; null for the same.</param>
/// <param name="StrungMm">Greatest height under the strings' tension, mm; null where <c>load.bridge_rise</c> says it.</param>
/// <param name="Fullness">Exponent p of the membrane shape, 1 (natural) to 2 (meets the rim without a crease).</param>
/// <param name="StartMm">Station where the dome starts, mm, or null for the soundhole's upper edge.</param>
/// <param name="RimWidthMm">Width of the flat ring inside the outline, mm.</param>
/// <param name="RadiusMm">Radius of a dish, mm; null for the sphere that meets the rim at the lower bout. A rim on a sphere has its radius
/// from <paramref name="HeightMm"/>, so that one figure rules.</param>
/// <param name="CentreMm">Station of a dish's deepest place, mm; null for the lower bout's.</param>
/// <param name="BlendMm">Length over which a dish, or a rim on a sphere, runs into the flat, mm.</param>
public sealed record DomeDesign(
    DomeKind Kind,
    double HeightMm,
    double? FreeMm,
    double? StrungMm,
    double Fullness,
    double? StartMm,
    double RimWidthMm,
    double? RadiusMm,
    double? CentreMm,
    double BlendMm
)
{
    internal static DomeDesign Read(
        TableReader table,
        OutlineDesign outline,
        IReadOnlyList<HarmonicBarDesign> bars
    )
    {
        DomeDesign dome = new(
            table.Choice("kind", DomeKind.Membrane),
            table.Length("height", 2.5, 0, 20),
            table.OptionalLength("free", 0, 20),
            table.OptionalLength("strung", 0, 20),
            table.Number("fullness", 1, 1, 2, ""),
            table.OptionalLength("start", 0, 1500),
            table.Length("rim_width", 12, 1, 100),
            table.OptionalLength("radius", 500, 100_000),
            table.OptionalLength("centre", 1, 1500),
            table.Length("blend", 40, 1, 300)
        );
        if (dome.Kind != DomeKind.RimOnSphere)
        {
            return dome;
        }

        double start = dome.StartMm ?? bars.Select(bar => bar.AtMm).DefaultIfEmpty(0).Min();
        dome = dome with { StartMm = start };
        if (dome.RadiusMm is not { } radius)
        {
            return dome;
        }

        if (table.Has("height"))
        {
            table.Fault("height", DesignWords.Of["diagnostic.dome-sphere"]);
        }

        double half = (outline.BodyLengthMm - start) / 2;
        double height =
            half > 0 && half < radius ? radius - Math.Sqrt((radius * radius) - (half * half)) : 0;
        return dome with { HeightMm = height };
    }
}

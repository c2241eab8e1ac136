using Formwright.Fields.Plates;

namespace Formwright.Plates.Tests.Plates;

internal static class Woods
{
    /// <summary>Flexural rigidity 1 at thickness 1, mass 1 per area, Poisson 0.3: so that λ = ω a².</summary>
    internal static PlateWood Unit { get; } = PlateWood.Isotropic(12 * (1 - 0.09), 0.3, 1e12);

    /// <summary>Like <see cref="Unit"/> without contraction across, for strips that bend as beams: E = 12.</summary>
    internal static PlateWood Strip { get; } = PlateWood.Isotropic(12, 0, 1e12);

    /// <summary>
    /// Sitka spruce as in the checks: E_L 10.8 GPa, E_R .078 E_L, G_LR .064 E_L, ν_LR .372 (Wood Handbook, FPL-GTR-282), 400 kg/m³.
    /// </summary>
    internal static PlateWood Sitka { get; } = new(10800, 0.078 * 10800, 0.064 * 10800, 0.372, 400);
}

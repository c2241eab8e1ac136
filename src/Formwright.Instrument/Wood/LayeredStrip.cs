namespace Formwright.Instrument.Wood;

/// <summary>
/// A straight strip of glued layers, bent by what the layers would like to do: linear elastic, plane sections stay plane, free of outside
/// loads. Two layers of equal width give the bimetal strip of Timoshenko (<i>Analysis of bi-metal thermostats</i>, J. Opt. Soc. Am. 11, 1925);
/// layers of different widths (a plate on its bar) obey the same equilibrium. It leaves out shear lag and creep of wood and glue.
/// </summary>
/// <param name="Layers">From the bottom up.</param>
/// <param name="NeutralAxisMm">Height of the neutral axis over the bottom, mm.</param>
/// <param name="AxialStiffnessN">Σ E A, N.</param>
/// <param name="BendingStiffnessNmm2">E I about the neutral axis, N·mm² (transformed section).</param>
/// <param name="CurvaturePerMm">Curvature from the free strains, 1/mm, positive when the top is on the outside of the bend.</param>
/// <param name="AxisStrain">Strain at the neutral axis.</param>
public sealed record LayeredStrip(
    IReadOnlyList<Layer> Layers,
    double NeutralAxisMm,
    double AxialStiffnessN,
    double BendingStiffnessNmm2,
    double CurvaturePerMm,
    double AxisStrain
)
{
    /// <summary>The equilibrium of some layers.</summary>
    /// <param name="layers">From the bottom up, at least one; widths, thicknesses and moduli above 0.</param>
    public static LayeredStrip Of(params IReadOnlyList<Layer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        ArgumentOutOfRangeException.ThrowIfZero(layers.Count, nameof(layers));
        double bottom = 0;
        double axial = 0;
        double first = 0;
        foreach (Layer layer in layers)
        {
            Guard.Positive(layer.WidthMm);
            Guard.Finite(layer.FreeStrain);
            double ea =
                Guard.Positive(layer.ModulusMPa)
                * layer.WidthMm
                * Guard.Positive(layer.ThicknessMm);
            axial += ea;
            first += ea * (bottom + (layer.ThicknessMm / 2));
            bottom += layer.ThicknessMm;
        }

        double axis = first / axial;
        double bending = 0;
        double force = 0;
        double moment = 0;
        bottom = 0;
        foreach (Layer layer in layers)
        {
            double ea = layer.ModulusMPa * layer.WidthMm * layer.ThicknessMm;
            double z = bottom + (layer.ThicknessMm / 2) - axis;
            bending += ea * ((z * z) + (layer.ThicknessMm * layer.ThicknessMm / 12));
            force += ea * layer.FreeStrain;
            moment += ea * layer.FreeStrain * z;
            bottom += layer.ThicknessMm;
        }

        return new LayeredStrip(layers, axis, axial, bending, moment / bending, force / axial);
    }

    /// <summary>Stress in a layer at a height over the bottom, MPa, pull positive.</summary>
    /// <param name="layer">Index of the layer, from the bottom.</param>
    /// <param name="heightMm">Height over the bottom of the strip, mm.</param>
    public double StressMPa(int layer, double heightMm) =>
        Layers[layer].ModulusMPa
        * (AxisStrain + (CurvaturePerMm * (heightMm - NeutralAxisMm)) - Layers[layer].FreeStrain);
}

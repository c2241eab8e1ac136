namespace Formwright.Fields.Plates;

/// <summary>What a sheet of wood is made of, as far as its bending goes: plane stress, two axes of symmetry.</summary>
public sealed record PlateWood
{
    /// <param name="alongMpa">Modulus along the grain, MPa.</param>
    /// <param name="acrossMpa">Modulus across the grain in the plane of the sheet, MPa.</param>
    /// <param name="shearMpa">Shear modulus in the plane of the sheet, MPa.</param>
    /// <param name="poisson">Contraction across the grain over stretch along it (ν along-across, such as ν_LR).</param>
    /// <param name="densityKgM3">Density, kg/m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not positive and finite, or the elasticity would not be positive.</exception>
    public PlateWood(
        double alongMpa,
        double acrossMpa,
        double shearMpa,
        double poisson,
        double densityKgM3
    )
    {
        AlongMpa = Guard.Positive(alongMpa);
        AcrossMpa = Guard.Positive(acrossMpa);
        ShearMpa = Guard.Positive(shearMpa);
        Poisson = Guard.Finite(poisson);
        DensityKgM3 = Guard.Positive(densityKgM3);
        if (!(poisson * poisson * acrossMpa < alongMpa))
        {
            throw new ArgumentOutOfRangeException(
                nameof(poisson),
                poisson,
                "No material contracts so much."
            );
        }
    }

    public double AlongMpa { get; }

    public double AcrossMpa { get; }

    public double ShearMpa { get; }

    public double Poisson { get; }

    public double DensityKgM3 { get; }

    /// <summary>A sheet that is alike in all directions.</summary>
    public static PlateWood Isotropic(double modulusMpa, double poisson, double densityKgM3) =>
        new(modulusMpa, modulusMpa, modulusMpa / (2 * (1 + poisson)), poisson, densityKgM3);

    /// <summary>
    /// Plane-stress stiffness Q (σ = Q ε with ε_x, ε_y, γ_xy) when the grain runs at an angle to x, row by row (R. M. Jones,
    /// <i>Mechanics of Composite Materials</i>, transformed reduced stiffness).
    /// </summary>
    /// <param name="grainAngleRad">From +x towards +y.</param>
    internal double[] Stiffness(double grainAngleRad)
    {
        double divisor = 1 - (Poisson * Poisson * AcrossMpa / AlongMpa);
        double q11 = AlongMpa / divisor;
        double q22 = AcrossMpa / divisor;
        double q12 = Poisson * AcrossMpa / divisor;
        (double s, double c) = Math.SinCos(grainAngleRad);
        // Strains in the wood's axes from those in x and y.
        double[] turn =
        [
            c * c,
            s * s,
            s * c,
            s * s,
            c * c,
            -s * c,
            -2 * s * c,
            2 * s * c,
            (c * c) - (s * s),
        ];
        double[] own = [q11, q12, 0, q12, q22, 0, 0, 0, ShearMpa];
        double[] stiffness = new double[9];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                for (int k = 0; k < 3; k++)
                {
                    for (int l = 0; l < 3; l++)
                    {
                        stiffness[(3 * i) + j] +=
                            turn[(3 * k) + i] * own[(3 * k) + l] * turn[(3 * l) + j];
                    }
                }
            }
        }

        return stiffness;
    }
}

using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>A height field at one place: its height and its first and second derivatives.</summary>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="Slope">∂z/∂x and ∂z/∂y, mm per mm: points straight uphill.</param>
/// <param name="Zxx">∂²z/∂x², 1/mm.</param>
/// <param name="Zxy">∂²z/∂x∂y, 1/mm.</param>
/// <param name="Zyy">∂²z/∂y², 1/mm.</param>
public readonly record struct HeightSample(
    double HeightMm,
    Vector Slope,
    double Zxx,
    double Zxy,
    double Zyy
)
{
    /// <summary>∂²z/∂x² + ∂²z/∂y², 1/mm.</summary>
    public double Laplacian => Zxx + Zyy;

    /// <summary>Rise per mm when going in a direction (a vector of length 1).</summary>
    public double SlopeAlong(Vector direction) => Slope.Dot(direction);

    /// <summary>
    /// Curvature, 1/mm, of the upright section in a direction (a vector of length 1): z″/(1 + z′²)^(3/2), positive in a hollow.
    /// </summary>
    public double SectionCurvature(Vector direction)
    {
        double slope = SlopeAlong(direction);
        double second =
            (Zxx * direction.X * direction.X)
            + (2 * Zxy * direction.X * direction.Y)
            + (Zyy * direction.Y * direction.Y);
        return second / Math.Pow(1 + (slope * slope), 1.5);
    }
}

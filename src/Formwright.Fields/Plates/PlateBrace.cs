using System.Collections.Immutable;

namespace Formwright.Fields.Plates;

/// <summary>
/// A bar glued along a line to the inner face of a plate: a rectangle in section, bent as an Euler-Bernoulli beam with the plate, stretched
/// and twisted with it.
/// </summary>
public sealed record PlateBrace
{
    /// <param name="stations">Its line and heights, two stations or more.</param>
    /// <param name="widthMm">Width, mm.</param>
    /// <param name="modulusMpa">Modulus along the brace, MPa.</param>
    /// <param name="shearMpa">Shear modulus for its twist, MPa; 0 leaves the twist out.</param>
    /// <param name="densityKgM3">Density, kg/m³; 0 leaves its mass out.</param>
    /// <param name="offsetMm">
    /// Place of its middle over the middle of the plate, mm, outwards positive; null: glued under the plate, -(thickness + height)/2.
    /// </param>
    /// <exception cref="ArgumentException">A figure can't be, or there are less than two different stations.</exception>
    public PlateBrace(
        IEnumerable<BraceStation> stations,
        double widthMm,
        double modulusMpa,
        double shearMpa,
        double densityKgM3,
        double? offsetMm = null
    )
    {
        ArgumentNullException.ThrowIfNull(stations);
        Stations = [.. stations];
        WidthMm = Guard.Positive(widthMm);
        ModulusMpa = Guard.Positive(modulusMpa);
        ShearMpa = Guard.NotNegative(shearMpa);
        DensityKgM3 = Guard.NotNegative(densityKgM3);
        OffsetMm = offsetMm is double offset ? Guard.Finite(offset) : null;
        for (int i = 0; i < Stations.Length; i++)
        {
            Guard.NotNegative(Stations[i].HeightMm);
            if (
                !Stations[i].At.IsFinite
                || (i > 0 && !(Stations[i].At.DistanceTo(Stations[i - 1].At) > 0))
            )
            {
                throw new ArgumentException(
                    "Stations must be finite and differ.",
                    nameof(stations)
                );
            }
        }

        if (Stations.Length < 2)
        {
            throw new ArgumentException("A brace needs two stations.", nameof(stations));
        }
    }

    public ImmutableArray<BraceStation> Stations { get; }

    public double WidthMm { get; }

    public double ModulusMpa { get; }

    public double ShearMpa { get; }

    public double DensityKgM3 { get; }

    public double? OffsetMm { get; }

    /// <summary>Length of its line, mm.</summary>
    public double LengthMm =>
        Stations.Zip(Stations.Skip(1)).Sum(pair => pair.First.At.DistanceTo(pair.Second.At));

    /// <summary>
    /// Torsion constant of a rectangle, mm⁴, from St Venant's series (Timoshenko &amp; Goodier, <i>Theory of Elasticity</i>, section 109).
    /// </summary>
    public static double TorsionConstant(double widthMm, double heightMm)
    {
        double b = Math.Min(Guard.NotNegative(widthMm), Guard.NotNegative(heightMm));
        double a = Math.Max(widthMm, heightMm);
        if (b == 0)
        {
            return 0;
        }

        double sum = 0;
        for (int n = 1; n <= 15; n += 2)
        {
            sum += Math.Tanh(n * Math.PI * a / (2 * b)) / Math.Pow(n, 5);
        }

        return a * b * b * b / 3 * (1 - (192 * b / (Math.Pow(Math.PI, 5) * a) * sum));
    }
}

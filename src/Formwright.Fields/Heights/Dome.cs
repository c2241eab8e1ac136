using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// A dome d = d_max (u / max u)^p on the membrane u: p = 1 is the natural membrane, p = 2 meets the rim without a crease.
/// </summary>
/// <remarks>
/// On the rim the height is 0. The slope there is the membrane's for p = 1 and 0 for p &gt; 1. The second derivatives hold
/// a term p (p - 1) u^(p - 2) |∇u|²: finite for p = 1 and p = 2, growing without bound towards the rim for 1 &lt; p &lt; 2,
/// where they are taken no nearer to it than u = <see cref="NearestToRim"/> · max u.
/// </remarks>
public sealed class Dome : IHeightField
{
    /// <summary>Share of max u below which second derivatives are not followed further towards the rim (tuned).</summary>
    public const double NearestToRim = 1e-3;

    /// <param name="membrane">The membrane over the region inside the rim.</param>
    /// <param name="heightMm">Height of the dome d_max, mm, 0 or more.</param>
    /// <param name="exponent">Exponent p from 1 to 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite or out of its range.</exception>
    public Dome(MembraneSolution membrane, double heightMm, double exponent = 1)
    {
        ArgumentNullException.ThrowIfNull(membrane);
        CheckShape(heightMm, exponent);
        Membrane = membrane;
        HeightMm = heightMm;
        Exponent = exponent;
    }

    public MembraneSolution Membrane { get; }

    /// <summary>d_max, mm.</summary>
    public double HeightMm { get; }

    /// <summary>p, 1 to 2.</summary>
    public double Exponent { get; }

    public Region Region => Membrane.Region;

    public HeightPeak Peak => new(Membrane.Field.Peak.Place, HeightMm);

    /// <summary>Estimated error of the height anywhere, mm.</summary>
    public double EstimatedErrorMm => Membrane.EstimatedErrorMm(HeightMm, Exponent);

    public double HeightAt(Point place)
    {
        double share = Membrane.Field.HeightAt(place) / Membrane.Field.Peak.HeightMm;
        return share <= 0 ? 0
            : Exponent == 1 ? HeightMm * share
            : HeightMm * Math.Pow(share, Exponent);
    }

    public HeightSample At(Point place)
    {
        HeightSample u = Membrane.Field.At(place);
        double most = Membrane.Field.Peak.HeightMm;
        double share = Math.Max(u.HeightMm / most, 0);
        // d = d_max g(u / max u): the derivatives follow by the chain rule from g' and g''.
        double height = HeightMm * Math.Pow(share, Exponent);
        double first = HeightMm / most * Exponent * Math.Pow(share, Exponent - 1);
        double second =
            Exponent == 1
                ? 0
                : HeightMm
                    / (most * most)
                    * Exponent
                    * (Exponent - 1)
                    * Math.Pow(Math.Max(share, NearestToRim), Exponent - 2);
        return new(
            height,
            u.Slope * first,
            (first * u.Zxx) + (second * u.Slope.X * u.Slope.X),
            (first * u.Zxy) + (second * u.Slope.X * u.Slope.Y),
            (first * u.Zyy) + (second * u.Slope.Y * u.Slope.Y)
        );
    }

    internal static void CheckShape(double heightMm, double exponent)
    {
        if (!(double.IsFinite(heightMm) && heightMm >= 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(heightMm),
                heightMm,
                "A height of 0 or more is needed."
            );
        }
        if (!(exponent >= 1 && exponent <= 2))
        {
            throw new ArgumentOutOfRangeException(
                nameof(exponent),
                exponent,
                "An exponent from 1 to 2 is needed."
            );
        }
    }
}

namespace Formwright.Instrument.Necks;

/// <summary>
/// Deflection of a slender cantilever (Euler-Bernoulli) from its curvature: w(x) = ∫ₓᴸ κ(ξ)(ξ - x) dξ, clamped at its last place. The integral is taken
/// piece by piece between given places with five Gauss points each, exact for curvatures up to the eighth power within a piece.
/// </summary>
public sealed class Cantilever
{
    private const int PointsPerPiece = 5;
    private static readonly double[] Nodes = GaussNodes();
    private static readonly double[] Weights = GaussWeights();
    private readonly double[] places;
    private readonly double[] at;
    private readonly double[] weight;

    /// <summary>Lays the points.</summary>
    /// <param name="placesMm">Where the deflection is wanted, rising, the clamp last; at least two.</param>
    public Cantilever(IReadOnlyList<double> placesMm)
    {
        ArgumentNullException.ThrowIfNull(placesMm);
        ArgumentOutOfRangeException.ThrowIfLessThan(placesMm.Count, 2, nameof(placesMm));
        places = [.. placesMm];
        at = new double[(places.Length - 1) * PointsPerPiece];
        weight = new double[at.Length];
        for (int i = 0; i + 1 < places.Length; i++)
        {
            double half = 0.5 * (places[i + 1] - places[i]);
            if (!(half > 0))
            {
                throw new ArgumentException("The places must rise.", nameof(placesMm));
            }

            for (int q = 0; q < PointsPerPiece; q++)
            {
                at[(i * PointsPerPiece) + q] = places[i] + (half * (1 + Nodes[q]));
                weight[(i * PointsPerPiece) + q] = half * Weights[q];
            }
        }
    }

    /// <summary>Where the deflection is known, mm.</summary>
    public IReadOnlyList<double> PlacesMm => places;

    /// <summary>Where the curvature is wanted, mm.</summary>
    public IReadOnlyList<double> PointsMm => at;

    /// <summary>Weights of those points, mm.</summary>
    public IReadOnlyList<double> WeightsMm => weight;

    /// <summary>Deflection at every place, mm.</summary>
    /// <param name="curvature">Curvature at each of <see cref="PointsMm"/>, 1/mm.</param>
    public double[] Deflections(ReadOnlySpan<double> curvature)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(curvature.Length, at.Length, nameof(curvature));
        double[] w = new double[places.Length];
        double turn = 0;
        double moment = 0;
        for (int i = places.Length - 2; i >= 0; i--)
        {
            for (int q = i * PointsPerPiece; q < (i + 1) * PointsPerPiece; q++)
            {
                double part = weight[q] * curvature[q];
                turn += part;
                moment += part * at[q];
            }

            w[i] = moment - (places[i] * turn);
        }

        return w;
    }

    /// <summary>Deflection at every place under a bending moment, mm.</summary>
    /// <param name="momentNmm">Moment at a place, N·mm.</param>
    /// <param name="stiffnessNmm2">Bending stiffness EI at a place, N·mm².</param>
    public double[] Deflections(Func<double, double> momentNmm, Func<double, double> stiffnessNmm2)
    {
        ArgumentNullException.ThrowIfNull(momentNmm);
        ArgumentNullException.ThrowIfNull(stiffnessNmm2);
        double[] curvature = [.. at.Select(x => momentNmm(x) / stiffnessNmm2(x))];
        return Deflections(curvature);
    }

    // Legendre polynomial of degree 5: 0, ±(1/3)√(5 ∓ 2√(10/7)).
    private static double[] GaussNodes()
    {
        double inner = Math.Sqrt(5 - (2 * Math.Sqrt(10.0 / 7))) / 3;
        double outer = Math.Sqrt(5 + (2 * Math.Sqrt(10.0 / 7))) / 3;
        return [-outer, -inner, 0, inner, outer];
    }

    private static double[] GaussWeights()
    {
        double inner = (322 + (13 * Math.Sqrt(70))) / 900;
        double outer = (322 - (13 * Math.Sqrt(70))) / 900;
        return [outer, inner, 128.0 / 225, inner, outer];
    }
}

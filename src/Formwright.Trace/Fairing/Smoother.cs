namespace Formwright.Trace.Fairing;

/// <summary>
/// Moves a curve along its normals to the least of ∫ w r² ds + λ ∫ (d²(κ - κₚ)/ds²)² ds: r its distance from the stations, κ its
/// curvature, κₚ the curvature of a prior shape (0 for none: then the null space is the Euler spiral).
/// λ = (Λ/2π)⁸ halves waves of length Λ (the transfer function of a smoothing spline of that order on evenly spread data: Craven &amp;
/// Wahba, Numerische Mathematik 31, 1979).
/// </summary>
internal sealed class Smoother(int last)
{
    private const int Band = 4;
    private readonly BandedCholesky matrix = new(last + 1, Band);
    private readonly double[] stiffness = new double[last + 1];
    private readonly double[] right = new double[last + 1];

    /// <summary>How far each place of the curve moves outwards, mm; null when the stations do not hold the curve.</summary>
    /// <param name="curve">The present curve.</param>
    /// <param name="held">Arc length, distance outwards and weight of each station.</param>
    /// <param name="waveMm">Λ, mm.</param>
    /// <param name="prior">κₚ at the places of the curve, or empty.</param>
    /// <param name="hinges">Places where κ - κₚ may turn sharply.</param>
    internal double[]? Step(
        GridCurve curve,
        ReadOnlySpan<(double S, double R, double Weight)> held,
        double waveMm,
        ReadOnlySpan<double> prior,
        IReadOnlyList<int> hinges
    )
    {
        double h = curve.StepMm;
        matrix.Clear();
        Array.Clear(right);
        foreach ((double s, double r, double weight) in held)
        {
            double at = Math.Clamp(s / h, 0, last);
            int i = Math.Min((int)at, last - 1);
            double t = at - i;
            matrix.Add(i, i, weight * (1 - t) * (1 - t));
            matrix.Add(i + 1, i, weight * t * (1 - t));
            matrix.Add(i + 1, i + 1, weight * t * t);
            right[i] += weight * (1 - t) * r;
            right[i + 1] += weight * t * r;
        }

        Array.Fill(stiffness, 1);
        foreach (int hinge in hinges)
        {
            for (int j = Math.Max(0, hinge - 1); j <= Math.Min(last, hinge + 1); j++)
            {
                stiffness[j] = 1e-4;
            }
        }

        double lambda = Math.Pow(waveMm / (2 * Math.PI), 8);
        Span<double> row = stackalloc double[5];
        Span<int> index = stackalloc int[5];
        for (int j = 0; j <= last; j++)
        {
            // κ'' at j as a linear function of the moves of j-2 … j+2: second differences of κ + ν'' + κ²ν.
            row.Clear();
            double now = 0;
            for (int d = -1; d <= 1; d++)
            {
                double outer = (d == 0 ? -2 : 1) / (h * h);
                double k = curve.Kappa[Fold(j + d)];
                now += outer * (prior.IsEmpty ? k : k - prior[Fold(j + d)]);
                row[d + 1] += outer / (h * h);
                row[d + 2] += outer * ((k * k) - (2 / (h * h)));
                row[d + 3] += outer / (h * h);
            }

            for (int m = 0; m < 5; m++)
            {
                index[m] = Fold(j + m - 2);
            }

            double weight = lambda * h * stiffness[j] * (j == 0 || j == last ? 0.5 : 1);
            for (int m = 0; m < 5; m++)
            {
                right[index[m]] -= weight * row[m] * now;
                for (int n = 0; n <= m; n++)
                {
                    // Two mirrored neighbours may be the same place: then the pair counts twice.
                    double value = weight * row[m] * row[n];
                    matrix.Add(
                        index[m],
                        index[n],
                        m != n && index[m] == index[n] ? 2 * value : value
                    );
                }
            }
        }

        double[] moves = (double[])right.Clone();
        return matrix.FactorAndSolve(moves) ? moves : null;
    }

    /// <summary>Beyond the ends the curve is its own mirror image.</summary>
    private int Fold(int i) =>
        i < 0 ? -i
        : i > last ? (2 * last) - i
        : i;
}

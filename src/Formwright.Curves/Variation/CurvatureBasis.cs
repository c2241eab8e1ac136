using System.Collections.Concurrent;

namespace Formwright.Curves.Variation;

/// <summary>
/// Shape functions for a curvature plot over σ in [0, 1]: two straight ones that carry the curvatures at the ends, and bubbles that
/// vanish at both ends, φₖ = √(2k+1) ∫₀^σ Pₖ(2t-1) dt with Pₖ the Legendre polynomials. The derivatives of the bubbles are orthonormal,
/// so ∫κ'² is a sum of squares, and smooth plots need few of them (Szabó &amp; Babuška, Finite Element Analysis, 1991; from memory).
/// </summary>
internal sealed class CurvatureBasis
{
    private static readonly ConcurrentDictionary<int, CurvatureBasis> Known = new();

    private CurvatureBasis(int bubbles)
    {
        Bubbles = bubbles;
        Rule = GaussLegendre.Of(bubbles + 16);
        int points = Rule.Nodes.Length;
        Areas = new double[bubbles + 2][];
        for (int j = 0; j < Areas.Length; j++)
        {
            Areas[j] = new double[points];
        }

        double[] values = new double[bubbles + 2];
        for (int q = 0; q < points; q++)
        {
            AreasAt(Rule.Nodes[q], values);
            for (int j = 0; j < values.Length; j++)
            {
                Areas[j][q] = values[j];
            }
        }
    }

    internal int Bubbles { get; }

    internal GaussLegendre Rule { get; }

    /// <summary>For each shape function its integral from 0 to each quadrature node.</summary>
    internal double[][] Areas { get; }

    internal static CurvatureBasis Of(int bubbles) =>
        Known.GetOrAdd(bubbles, count => new CurvatureBasis(count));

    /// <summary>Integral of a shape function over the whole span.</summary>
    internal static double Share(int j) =>
        j < 2 ? 0.5
        : j == 2 ? -Math.Sqrt(3) / 6
        : 0;

    /// <summary>The curvature Σ cⱼφⱼ at σ.</summary>
    internal static double Curvature(ReadOnlySpan<double> c, double sigma)
    {
        double x = (2 * sigma) - 1;
        double sum = c[0] + ((c[1] - c[0]) * sigma);
        double before = 1;
        double now = x;
        for (int k = 1; k < c.Length - 1; k++)
        {
            double next = ((((2 * k) + 1) * x * now) - (k * before)) / (k + 1);
            sum += c[k + 1] * 0.5 * (next - before) / Math.Sqrt((2 * k) + 1);
            (before, now) = (now, next);
        }

        return sum;
    }

    /// <summary>Integrals of all shape functions from 0 to σ.</summary>
    internal static void AreasAt(double sigma, Span<double> into)
    {
        int bubbles = into.Length - 2;
        double x = (2 * sigma) - 1;
        Span<double> p = stackalloc double[bubbles + 3];
        p[0] = 1;
        p[1] = x;
        for (int n = 1; n + 1 < p.Length; n++)
        {
            p[n + 1] = ((((2 * n) + 1) * x * p[n]) - (n * p[n - 1])) / (n + 1);
        }

        into[0] = sigma - (0.5 * sigma * sigma);
        into[1] = 0.5 * sigma * sigma;
        for (int k = 1; k <= bubbles; k++)
        {
            double above = (p[k + 2] - p[k]) / ((2 * k) + 3);
            double below = k == 1 ? p[1] + 1 : (p[k] - p[k - 2]) / ((2 * k) - 1);
            into[k + 1] = 0.25 * (above - below) / Math.Sqrt((2 * k) + 1);
        }
    }
}

namespace Formwright.Trace.Fitting;

/// <summary>Where the nodes of a curvature plot go to begin with.</summary>
internal static class Nodes
{
    /// <summary>
    /// Arc lengths that share out ∫ |κ''|^¼ evenly: a straight piece of length l leaves the plot so that the curve leaves its place by
    /// about κ'' l⁴ / 384.
    /// </summary>
    internal static double[] Spread(ReadOnlySpan<double> kappa, double stepMm, int segments)
    {
        int last = kappa.Length - 1;
        double[] density = new double[last + 1];
        double scale = 0;
        for (int i = 0; i <= last; i++)
        {
            double second =
                kappa[Math.Abs(i - 1)] - (2 * kappa[i]) + kappa[i + 1 > last ? last - 1 : i + 1];
            density[i] = Math.Abs(second);
            scale = Math.Max(scale, density[i]);
        }

        double[] sum = new double[last + 1];
        for (int i = 0; i <= last; i++)
        {
            double share = Math.Pow((density[i] / Math.Max(scale, 1e-300)) + 1e-4, 0.25);
            sum[i] = share + (i > 0 ? sum[i - 1] : 0);
        }

        double[] s = new double[segments + 1];
        s[segments] = last * stepMm;
        int at = 0;
        for (int j = 1; j < segments; j++)
        {
            double wanted = sum[0] + ((sum[last] - sum[0]) * j / segments);
            while (at < last - 1 && sum[at + 1] < wanted)
            {
                at++;
            }

            s[j] = (at + ((wanted - sum[at]) / (sum[at + 1] - sum[at]))) * stepMm;
        }

        return s;
    }
}

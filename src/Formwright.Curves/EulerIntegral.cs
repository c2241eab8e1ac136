namespace Formwright.Curves;

/// <summary>
/// The displacement ∫₀ˢ exp i(θ₀ + κ₀t + ½κ't²) dt of an Euler spiral.
/// </summary>
/// <remarks>
/// Method (own): the arc is cut into equal panels that turn by at most 2 rad; in each the exponential is expanded about the panel's
/// middle, where its Taylor coefficients follow the recurrence (n+1)c₍ₙ₊₁₎ = i(a cₙ + 2b c₍ₙ₋₁₎) with a = κh, b = ½κ'h², h half
/// the panel. |a| ≤ 1 and |b| ≤ ½, so that the series converges faster than eⁿ/n! and needs no special case for small κ or κ'.
/// Error: a few units of the last place of <c>s</c>, measured against Fresnel tables and panelled Gauss-Legendre in the tests.
/// Compare Bertolazzi &amp; Frego, G1 fitting with clothoids (2015), section 4.
/// </remarks>
internal static class EulerIntegral
{
    /// <summary>Beyond this the angle itself loses the digits that a position needs.</summary>
    internal const double LargestTurning = 1e5;

    private const double Negligible = 1e-17;
    private const int Terms = 40;

    private static readonly double[] Reciprocals =
    [
        .. Enumerable.Range(0, Terms + 3).Select(n => 1.0 / n),
    ];

    internal static Vector Displacement(double theta0, double kappa0, double rate, double s)
    {
        double bend = Math.Max(Math.Abs(kappa0), Math.Abs(kappa0 + (rate * s))) * Math.Abs(s);
        if (bend <= 2)
        {
            return Panel(theta0, kappa0, rate, 0, s);
        }

        int panels = (int)Math.Ceiling(bend / 2);
        Vector sum = default;
        for (int k = 0; k < panels; k++)
        {
            sum += Panel(theta0, kappa0, rate, s * k / panels, s * (k + 1) / panels);
        }

        return sum;
    }

    private static Vector Panel(double theta0, double kappa0, double rate, double from, double to)
    {
        double middle = 0.5 * (from + to);
        double h = 0.5 * (to - from);
        double a = (kappa0 + (rate * middle)) * h;
        double twoB = rate * h * h;

        // cₙ = p + iq (this) and before; sums of c₂ₖ/(2k+1).
        double beforeP = 1;
        double beforeQ = 0;
        double p = 0;
        double q = a;
        double sumP = 1;
        double sumQ = 0;
        for (int n = 1; n < Terms; n += 2)
        {
            double even = Reciprocals[n + 1];
            double odd = Reciprocals[n + 2];
            double evenP = -((a * q) + (twoB * beforeQ)) * even;
            double evenQ = ((a * p) + (twoB * beforeP)) * even;
            sumP += evenP * odd;
            sumQ += evenQ * odd;
            double oddP = -((a * evenQ) + (twoB * q)) * odd;
            double oddQ = ((a * evenP) + (twoB * p)) * odd;
            if (Math.Abs(evenP) + Math.Abs(evenQ) + Math.Abs(oddP) + Math.Abs(oddQ) < Negligible)
            {
                break;
            }

            (beforeP, beforeQ, p, q) = (evenP, evenQ, oddP, oddQ);
        }

        (double sin, double cos) = Math.SinCos(
            theta0 + (middle * (kappa0 + (0.5 * rate * middle)))
        );
        return new(2 * h * ((cos * sumP) - (sin * sumQ)), 2 * h * ((sin * sumP) + (cos * sumQ)));
    }
}

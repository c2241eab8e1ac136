namespace Formwright.Curves.Variation;

/// <summary>
/// One span of an outline between two features, whose places and tangents are known: a curvature plot Σ cⱼφⱼ(s/L) over the shape
/// functions of <see cref="CurvatureBasis"/>, and the span's length L. It knows its energy ∫κ'² ds, how far it misses its end, and the
/// exact first and second derivatives of both.
/// </summary>
/// <remarks>
/// With σ = s/L, Bⱼ = ∫₀^σ φⱼ and Φ = Σ cⱼBⱼ, the end is Z = L∫exp i(θ₀ + LΦ) dσ; its derivatives are integrals of Bⱼ, BⱼBₖ and Φ
/// against exp iθ, taken by Gauss-Legendre quadrature. All lengths are scaled so that the body is 4 long.
/// </remarks>
internal sealed class VariationSpan
{
    private readonly CurvatureBasis basis;
    private readonly double[] cos;
    private readonly double[] sin;
    private readonly double[] phi;
    private readonly double[] weighted;

    internal VariationSpan(int bubbles)
    {
        basis = CurvatureBasis.Of(bubbles);
        Plot = new double[bubbles + 2];
        int points = basis.Rule.Nodes.Length;
        cos = new double[points];
        sin = new double[points];
        phi = new double[points];
        weighted = new double[points];
        Gradient = new double[bubbles + 3];
        Jacobian = [new double[bubbles + 3], new double[bubbles + 3], new double[bubbles + 3]];
    }

    internal int Bubbles => basis.Bubbles;

    internal required Point From { get; init; }

    internal required double FromAngle { get; init; }

    internal required Point To { get; init; }

    internal required double ToAngle { get; init; }

    /// <summary>Coefficients of the curvature plot: at the start, at the end, then the bubbles.</summary>
    internal double[] Plot { get; }

    internal double Length { get; set; }

    /// <summary>∫κ'² ds.</summary>
    internal double Energy { get; private set; }

    /// <summary>By how much the end is missed: angle, x, y.</summary>
    internal double[] Miss { get; } = new double[3];

    /// <summary>dE/d(plot, L).</summary>
    internal double[] Gradient { get; }

    /// <summary>d(angle, x, y)/d(plot, L).</summary>
    internal double[][] Jacobian { get; }

    /// <summary>The same curve with room for more bubbles.</summary>
    internal VariationSpan With(int bubbles)
    {
        VariationSpan same = new(bubbles)
        {
            From = From,
            FromAngle = FromAngle,
            To = To,
            ToAngle = ToAngle,
            Length = Length,
        };
        Array.Copy(Plot, same.Plot, Plot.Length);
        return same;
    }

    /// <summary>Energy, miss and first derivatives at the present plot and length.</summary>
    internal void Evaluate()
    {
        int last = Plot.Length;
        double step = Plot[1] - Plot[0];
        double squares = step * step;
        Gradient[0] = -2 * step / Length;
        Gradient[1] = 2 * step / Length;
        for (int j = 2; j < last; j++)
        {
            squares += Plot[j] * Plot[j];
            Gradient[j] = 2 * Plot[j] / Length;
        }

        Energy = squares / Length;
        Gradient[last] = -Energy / Length;

        Array.Clear(phi);
        double area = 0;
        for (int j = 0; j < last; j++)
        {
            double[] grown = basis.Areas[j];
            double c = Plot[j];
            area += c * CurvatureBasis.Share(j);
            for (int q = 0; q < phi.Length; q++)
            {
                phi[q] += c * grown[q];
            }
        }

        double sumCos = 0;
        double sumSin = 0;
        double sumPhiCos = 0;
        double sumPhiSin = 0;
        for (int q = 0; q < phi.Length; q++)
        {
            (double s, double c) = Math.SinCos(FromAngle + (Length * phi[q]));
            cos[q] = c * basis.Rule.Weights[q];
            sin[q] = s * basis.Rule.Weights[q];
            sumCos += cos[q];
            sumSin += sin[q];
            sumPhiCos += phi[q] * cos[q];
            sumPhiSin += phi[q] * sin[q];
        }

        Miss[0] = FromAngle + (Length * area) - ToAngle;
        Miss[1] = From.X + (Length * sumCos) - To.X;
        Miss[2] = From.Y + (Length * sumSin) - To.Y;

        double squared = Length * Length;
        for (int j = 0; j < last; j++)
        {
            double[] grown = basis.Areas[j];
            Jacobian[0][j] = Length * CurvatureBasis.Share(j);
            Jacobian[1][j] = -squared * Dot(grown, sin);
            Jacobian[2][j] = squared * Dot(grown, cos);
        }

        Jacobian[0][last] = area;
        Jacobian[1][last] = sumCos - (Length * sumPhiSin);
        Jacobian[2][last] = sumSin + (Length * sumPhiCos);
    }

    /// <summary>Hessian of E - λ·(angle, x, y) over (plot, L); <see cref="Evaluate"/> must have run.</summary>
    internal void Hessian(double[] lambda, double[][] into)
    {
        int last = Plot.Length;
        double squared = Length * Length;
        double acrossPhi = 0;
        double alongPhiPhi = 0;
        for (int q = 0; q < phi.Length; q++)
        {
            double along = (lambda[1] * cos[q]) + (lambda[2] * sin[q]);
            double across = (lambda[2] * cos[q]) - (lambda[1] * sin[q]);
            acrossPhi += across * phi[q];
            alongPhiPhi += along * phi[q] * phi[q];
            weighted[q] = (squared * along * phi[q]) - (2 * Length * across);
        }

        into[last][last] = (2 * Energy / squared) - (2 * acrossPhi) + (Length * alongPhiPhi);
        for (int j = 0; j < last; j++)
        {
            into[last][j] =
                (-Gradient[j] / Length)
                - (lambda[0] * CurvatureBasis.Share(j))
                + Dot(basis.Areas[j], weighted);
            into[j][last] = into[last][j];
        }

        double cubed = squared * Length;
        for (int j = 0; j < last; j++)
        {
            double[] grown = basis.Areas[j];
            for (int q = 0; q < phi.Length; q++)
            {
                weighted[q] = cubed * grown[q] * ((lambda[1] * cos[q]) + (lambda[2] * sin[q]));
            }

            for (int k = 0; k <= j; k++)
            {
                into[j][k] = Dot(basis.Areas[k], weighted);
                into[k][j] = into[j][k];
            }
        }

        AddEnergy(into, 2 / Length);
    }

    /// <summary>Adds <paramref name="factor"/> × ½ the Hessian of ∫(dκ/dσ)² over the plot.</summary>
    internal void AddEnergy(double[][] into, double factor)
    {
        into[0][0] += factor;
        into[1][1] += factor;
        into[0][1] -= factor;
        into[1][0] -= factor;
        for (int j = 2; j < Plot.Length; j++)
        {
            into[j][j] += factor;
        }
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length && i < b.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}

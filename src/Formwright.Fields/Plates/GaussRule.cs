namespace Formwright.Fields.Plates;

/// <summary>Gauss-Legendre points on 0 to 1, by Newton's method on the Legendre polynomial.</summary>
internal sealed class GaussRule
{
    private static readonly GaussRule[] rules =
    [
        .. Enumerable.Range(1, 8).Select(n => new GaussRule(n)),
    ];

    private GaussRule(int count)
    {
        Points = new double[count];
        Weights = new double[count];
        for (int i = 0; i < count; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (count + 0.5));
            double slope = 1;
            for (int step = 0; step < 10; step++)
            {
                double before = 0;
                double value = 1;
                for (int k = 1; k <= count; k++)
                {
                    (before, value) = (
                        value,
                        ((((2 * k) - 1) * x * value) - ((k - 1) * before)) / k
                    );
                }

                slope = count * ((x * value) - before) / ((x * x) - 1);
                x -= value / slope;
            }

            Points[i] = (1 - x) / 2;
            Weights[i] = 1 / ((1 - (x * x)) * slope * slope);
        }
    }

    internal double[] Points { get; }

    internal double[] Weights { get; }

    /// <summary>Exact for polynomials up to degree 2n - 1.</summary>
    internal static GaussRule Of(int count) => rules[count - 1];
}

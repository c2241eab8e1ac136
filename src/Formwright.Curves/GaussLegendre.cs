namespace Formwright.Curves;

/// <summary>Gauss-Legendre quadrature on [0, 1]: nodes and weights by Newton's method on the Legendre recurrence.</summary>
internal sealed class GaussLegendre
{
    internal static readonly GaussLegendre Four = new(4);
    internal static readonly GaussLegendre Eight = new(8);

    internal static GaussLegendre Of(int count) => new(count);

    private GaussLegendre(int count)
    {
        Nodes = new double[count];
        Weights = new double[count];
        for (int i = 0; i < count; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (count + 0.5));
            double slope = 1;
            for (int round = 0; round < 100; round++)
            {
                double before = 1;
                double value = x;
                for (int n = 2; n <= count; n++)
                {
                    (before, value) = (
                        value,
                        ((((2 * n) - 1) * x * value) - ((n - 1) * before)) / n
                    );
                }

                slope = count * ((x * value) - before) / ((x * x) - 1);
                double step = value / slope;
                x -= step;
                if (Math.Abs(step) < 1e-16)
                {
                    break;
                }
            }

            Nodes[count - 1 - i] = 0.5 * (1 + x);
            Weights[count - 1 - i] = 1 / ((1 - (x * x)) * slope * slope);
        }
    }

    internal double[] Nodes { get; }

    internal double[] Weights { get; }
}

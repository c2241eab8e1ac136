namespace Formwright.Instrument.Tolerances;

/// <summary>
/// Draws of the shapes. Normal ones by the ziggurat of Marsaglia and Tsang (J. Stat. Softw. 5(8), 2000) with 128 layers, in the form of
/// Doornik (2005) that takes layer and place from separate bits.
/// </summary>
internal static class Draws
{
    private const int Layers = 128;

    // Right end of the lowest layer and area of each layer, for 128 layers (Marsaglia and Tsang 2000).
    private const double Tail = 3.442619855899;
    private const double Area = 9.91256303526217e-3;
    private const double Unit = 1.0 / (1L << 53);

    private static readonly double[] Edge = new double[Layers + 1];
    private static readonly double[] Ratio = new double[Layers];

    static Draws()
    {
        double f = Math.Exp(-0.5 * Tail * Tail);
        Edge[0] = Area / f;
        Edge[1] = Tail;
        for (int i = 2; i < Layers; i++)
        {
            Edge[i] = Math.Sqrt(-2 * Math.Log((Area / Edge[i - 1]) + f));
            f = Math.Exp(-0.5 * Edge[i] * Edge[i]);
        }

        Edge[Layers] = 0;
        for (int i = 0; i < Layers; i++)
        {
            Ratio[i] = Edge[i + 1] / Edge[i];
        }
    }

    /// <summary>Fills with draws of an input. The length is a multiple of 4.</summary>
    public static void Fill(RandomStream random, UncertainInput input, Span<double> values)
    {
        double spread = input.Spread;
        if (spread == 0)
        {
            values.Fill(input.Value);
            return;
        }

        switch (input.Shape)
        {
            case InputShape.Rectangular:
                random.FillUniform(values, input.Value - spread, 2 * spread);
                break;
            case InputShape.Normal:
                for (int i = 0; i < values.Length; i++)
                {
                    values[i] = input.Value + (spread * Normal(random));
                }

                break;
            case InputShape.Triangular:
                for (int i = 0; i < values.Length; i++)
                {
                    double sum = Uniform(random) + Uniform(random);
                    values[i] = input.Value + (spread * (sum - 1));
                }

                break;
            default:
                for (int i = 0; i < values.Length; i++)
                {
                    values[i] = input.Value + (spread * Math.Sin(2 * Math.PI * Uniform(random)));
                }

                break;
        }
    }

    /// <summary>One draw of the normal distribution of mean 0 and deviation 1.</summary>
    public static double Normal(RandomStream random)
    {
        while (true)
        {
            ulong word = random.Next();
            int layer = (int)(word & (Layers - 1));
            double u = (2 * Unit * (word >> 11)) - 1;
            if (Math.Abs(u) < Ratio[layer])
            {
                return u * Edge[layer];
            }

            if (layer == 0)
            {
                return FromTail(random, u < 0);
            }

            double x = u * Edge[layer];
            double lower = Math.Exp(-0.5 * ((Edge[layer] * Edge[layer]) - (x * x)));
            double upper = Math.Exp(-0.5 * ((Edge[layer + 1] * Edge[layer + 1]) - (x * x)));
            if (upper + (Uniform(random) * (lower - upper)) < 1)
            {
                return x;
            }
        }
    }

    private static double FromTail(RandomStream random, bool negative)
    {
        while (true)
        {
            double x = Math.Log(1 - Uniform(random)) / Tail;
            double y = Math.Log(1 - Uniform(random));
            if (-2 * y >= x * x)
            {
                return negative ? x - Tail : Tail - x;
            }
        }
    }

    private static double Uniform(RandomStream random) => Unit * (random.Next() >> 11);
}

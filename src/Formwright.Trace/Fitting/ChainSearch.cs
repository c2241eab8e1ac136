using Formwright.Curves;

namespace Formwright.Trace.Fitting;

/// <summary>Grows a <see cref="HalfChain"/> node by node until it fits.</summary>
internal sealed class ChainSearch
{
    /// <summary>Shortest segment, mm: shorter ones would follow noise (tuned).</summary>
    private const double ShortestMm = 6;

    private readonly ChainDescent descent;

    private ChainSearch(ChainDescent descent) => this.descent = descent;

    internal ChainSearch(
        Point[] places,
        double[] feet,
        double[] weights,
        ReadOnlySpan<double> kappa,
        double stepMm,
        double heelU,
        int segments
    )
    {
        double[] s = Nodes.Spread(kappa, stepMm, segments);
        double[] bend = new double[s.Length];
        for (int j = 0; j < s.Length; j++)
        {
            bend[j] = kappa[Math.Clamp((int)Math.Round(s[j] / stepMm), 0, kappa.Length - 1)];
        }

        descent = new ChainDescent(places, weights, ShortestMm)
        {
            Chain = new HalfChain(heelU, s, bend),
            Feet = (double[])feet.Clone(),
        };
    }

    internal HalfChain Chain => descent.Chain;

    internal ChainDescent Descent => descent;

    /// <summary>Largest distance of a place that counts, mm.</summary>
    internal double LargestMm
    {
        get
        {
            double largest = 0;
            for (int i = 0; i < descent.Distances.Length; i++)
            {
                if (descent.Weights[i] > 0)
                {
                    largest = Math.Max(largest, Math.Abs(descent.Distances[i]));
                }
            }

            return largest;
        }
    }

    internal void Run(int steps) => descent.Run(steps);

    /// <summary>Puts a node into the segment that fits worst; false when all are too short for one more.</summary>
    internal bool Grow()
    {
        HalfChain chain = descent.Chain;
        double[] misfit = new double[chain.Count];
        for (int i = 0; i < descent.Feet.Length; i++)
        {
            int j = Segment(chain, descent.Feet[i]);
            misfit[j] += descent.Weights[i] * descent.Distances[i] * descent.Distances[i];
        }

        int worst = -1;
        for (int j = 0; j < misfit.Length; j++)
        {
            double length = chain.S[j + 1] - chain.S[j];
            if (length > 3 * ShortestMm && (worst < 0 || misfit[j] > misfit[worst]))
            {
                worst = j;
            }
        }

        if (worst >= 0)
        {
            double at = 0.5 * (chain.S[worst] + chain.S[worst + 1]);
            double[] s = [.. chain.S[..(worst + 1)], at, .. chain.S[(worst + 1)..]];
            double[] kappa =
            [
                .. chain.Kappa[..(worst + 1)],
                chain.At(at).Curvature,
                .. chain.Kappa[(worst + 1)..],
            ];
            descent.Chain = new HalfChain(chain.HeelU, s, kappa);
        }

        return worst >= 0;
    }

    /// <summary>A copy with one node less.</summary>
    internal ChainSearch Without(int node)
    {
        HalfChain chain = descent.Chain;
        return new ChainSearch(
            descent.With(
                new HalfChain(
                    chain.HeelU,
                    [.. chain.S[..node], .. chain.S[(node + 1)..]],
                    [.. chain.Kappa[..node], .. chain.Kappa[(node + 1)..]]
                )
            )
        );
    }

    /// <summary>Gives the worst places more weight (Lawson's step, with its square root for calm).</summary>
    internal void Shift()
    {
        double[] weights = descent.Weights;
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] *= Math.Sqrt(Math.Abs(descent.Distances[i])) + 1e-4;
            sum += weights[i];
        }

        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] *= weights.Length / sum;
        }
    }

    internal void EvenWeights() => Array.Fill(descent.Weights, 1);

    private static int Segment(HalfChain chain, double at)
    {
        int j = chain.S.BinarySearch(at);
        return Math.Clamp(j >= 0 ? j : ~j - 1, 0, chain.Count - 1);
    }
}

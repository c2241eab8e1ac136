using Formwright.Curves;
using Formwright.Trace.Fairing;

namespace Formwright.Trace.Fitting;

/// <summary>The fewest Euler-spiral segments within a tolerance of a fair curve.</summary>
/// <remarks>
/// The count is grown until the curve is met, weights being shifted towards the worst places (Lawson's algorithm for the least largest
/// distance), and then nodes are taken out as long as that can be undone. That finds a count from which no single node can be spared; it is
/// no proof that no other arrangement has fewer.
/// </remarks>
internal static class FewestSegments
{
    private const int Most = 60;
    private const int FirstSteps = 30;
    private const int MoreSteps = 10;
    private const int LawsonRounds = 7;

    /// <summary>Lawson's rounds are worth it when the largest distance is within this of the tolerance (tuned).</summary>
    private const double NearEnough = 1.7;

    /// <summary>A chain that lacks a node and is still this far off is given up (tuned).</summary>
    private const double Hopeless = 4;

    private static readonly int[] Starts = [7, 10, 14, 20];

    /// <summary>
    /// The chain, which ends exactly on the centreline and across it, and its largest distance from the curve at the curve's places; null
    /// when none can be closed.
    /// </summary>
    internal static (HalfChain Chain, double LargestMm)? Of(GridCurve curve, double toleranceMm)
    {
        (HalfChain Chain, double LargestMm)? best = null;
        foreach (double share in Shares)
        {
            ChainSearch found = Found(curve, share * toleranceMm);
            if (found.Chain.Closed() is { } chain)
            {
                double largest = Largest(chain, curve);
                best =
                    largest < (best?.LargestMm ?? double.PositiveInfinity)
                        ? (chain, largest)
                        : best;
                if (largest <= toleranceMm)
                {
                    break;
                }
            }

            if (best is not null && found.LargestMm > share * toleranceMm)
            {
                // Not met before it was closed: less tolerance is of no use.
                break;
            }
        }

        return best;
    }

    /// <summary>Closing the chain may cost a little of the tolerance: then it is sought once more with less.</summary>
    private static readonly double[] Shares = [1, 0.9, 0.7];

    private static double Largest(HalfChain chain, GridCurve curve)
    {
        double largest = 0;
        double stretch = chain.LengthMm / curve.LengthMm;
        for (int i = 0; i <= curve.Last; i++)
        {
            double distance = chain.Foot(curve.Places[i], i * curve.StepMm * stretch).Distance;
            largest = Math.Max(largest, Math.Abs(distance));
        }

        return largest;
    }

    private static ChainSearch Found(GridCurve curve, double toleranceMm)
    {
        ChainSearch? search = null;
        foreach (int start in Starts)
        {
            search = Start(curve, start);
            search.Run(FirstSteps);
            if (search.LargestMm < 2 + (0.01 * curve.LengthMm))
            {
                break;
            }
        }

        while (!Meets(search!, toleranceMm) && search!.Chain.Count < Most && search.Grow())
        {
            search.Run(MoreSteps);
        }

        while (search!.LargestMm <= toleranceMm && Spare(search, toleranceMm) is { } fewer)
        {
            search = fewer;
        }

        return search;
    }

    private static ChainSearch Start(GridCurve curve, int segments)
    {
        // Every other place is enough to fit a chain; the whole curve is measured in the end.
        int[] taken =
        [
            .. Enumerable.Range(0, curve.Last + 1).Where(i => i % 2 == 0 || i == curve.Last),
        ];
        Point[] places = [.. taken.Select(i => curve.Places[i])];
        double[] feet = [.. taken.Select(i => i * curve.StepMm)];
        return new ChainSearch(
            places,
            feet,
            [.. places.Select(_ => 1.0)],
            curve.Kappa,
            curve.StepMm,
            curve.Places[0].X,
            segments
        );
    }

    /// <summary>Whether a chain meets the tolerance, if need be after shifting weights.</summary>
    private static bool Meets(ChainSearch search, double toleranceMm)
    {
        if (search.LargestMm <= toleranceMm)
        {
            return true;
        }

        if (search.LargestMm > NearEnough * toleranceMm)
        {
            return false;
        }

        ChainDescent.State before = search.Descent.Save();
        double last = search.LargestMm;
        for (int round = 0; round < LawsonRounds; round++)
        {
            search.Shift();
            search.Run(3);
            double largest = search.LargestMm;
            if (largest <= toleranceMm)
            {
                search.EvenWeights();
                return true;
            }

            // At this pace it won't get there.
            if (largest - toleranceMm > (LawsonRounds - round) * Math.Max(0, last - largest))
            {
                break;
            }

            last = largest;
        }

        search.Descent.Restore(before);
        search.EvenWeights();
        return false;
    }

    /// <summary>The chain with one node less, if that still meets the tolerance.</summary>
    private static ChainSearch? Spare(ChainSearch search, double toleranceMm)
    {
        HalfChain chain = search.Chain;
        if (chain.Count < 2)
        {
            return null;
        }

        // The nodes that bend the curvature plot least, first.
        int[] order =
        [
            .. Enumerable
                .Range(1, chain.Count - 1)
                .OrderBy(j => Math.Abs(Slope(chain, j) - Slope(chain, j - 1)) * Shorter(chain, j)),
        ];
        foreach (int node in order.Take(2))
        {
            ChainSearch other = search.Without(node);
            other.Run(MoreSteps);
            if (other.LargestMm > Hopeless * toleranceMm)
            {
                continue;
            }

            other.Run(MoreSteps);
            if (Meets(other, toleranceMm))
            {
                return other;
            }
        }

        return null;
    }

    private static double Slope(HalfChain chain, int segment) =>
        (chain.Kappa[segment + 1] - chain.Kappa[segment])
        / (chain.S[segment + 1] - chain.S[segment]);

    private static double Shorter(HalfChain chain, int node) =>
        Math.Pow(Math.Min(chain.S[node] - chain.S[node - 1], chain.S[node + 1] - chain.S[node]), 3);
}

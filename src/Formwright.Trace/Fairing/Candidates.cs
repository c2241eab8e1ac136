using Formwright.Trace.Fitting;

namespace Formwright.Trace.Fairing;

/// <summary>The shapes that a trace is compared with, each with the count of figures that describe it.</summary>
internal static class Candidates
{
    private const double OutlinePrice = 8;
    private const double RadiiPrice = 5;
    private const double HingePrice = 2;
    private const double AnyPrice = 13;
    private const int FewestSegments = 7;
    private const int MostSegments = 15;

    /// <summary>In the order in which they are worth trying; later ones are only made when they are asked for.</summary>
    /// <param name="priors">The minimum-variation outlines nearest to the trace: plain, and with radii of its own.</param>
    /// <param name="followed">A curve that follows the trace.</param>
    /// <param name="sides">The stations of each side.</param>
    /// <param name="priceToBeat">The price of the best fit so far; chains that alone cost more are not tried.</param>
    internal static IEnumerable<Candidate> Of(
        IReadOnlyList<ShapePrior> priors,
        GridCurve followed,
        IReadOnlyList<Station[]> sides,
        Func<double> priceToBeat
    )
    {
        for (int i = 0; i < priors.Count; i++)
        {
            double price = OutlinePrice + (i * RadiiPrice);
            GridCurve grid = priors[i].ToGrid(followed.Last);
            double[] kappa = grid.Kappa.ToArray();
            yield return new(grid, new Shape(kappa, []), price, priors[i]);
            List<int> hinges = Hinges(priors[i], grid);
            yield return new(
                grid,
                new Shape(kappa, hinges),
                price + (HingePrice * hinges.Count),
                priors[i]
            );
        }

        yield return new(null, Shape.None, AnyPrice, null);
        ChainGrowth? growth = null;
        for (int n = FewestSegments; n <= MostSegments && 2 * n < priceToBeat(); n++)
        {
            if (growth is null)
            {
                growth = new ChainGrowth(followed, sides, n);
            }
            else
            {
                growth.Grow();
            }

            GridCurve grid = GridCurve.Of(growth.Chain.ToChain(), followed.Last);
            yield return new(grid, new Shape(grid.Kappa.ToArray(), []), 2 * n, null);
        }
    }

    /// <summary>Bouts and waist: there an outline of other radii parts from the prior one.</summary>
    private static List<int> Hinges(ShapePrior prior, GridCurve grid)
    {
        List<int> hinges = [];
        foreach (
            double at in (double[])
                [
                    prior.Features.UpperBout.UMm,
                    prior.Features.Waist.UMm,
                    prior.Features.LowerBout.UMm,
                ]
        )
        {
            int nearest = 0;
            for (int i = 1; i <= grid.Last; i++)
            {
                if (Away(i) < Away(nearest))
                {
                    nearest = i;
                }
            }

            hinges.Add(nearest);

            double Away(int i) => Math.Abs(grid.Places[i].X - prior.HeelUMm - at);
        }

        return hinges;
    }
}

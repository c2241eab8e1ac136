using Formwright.Curves;
using Formwright.Trace.Fairing;

namespace Formwright.Trace.Fitting;

/// <summary>Chains of more and more segments that fit the stations of a trace by plain least squares.</summary>
internal sealed class ChainGrowth
{
    private const int FirstSteps = 30;
    private const int MoreSteps = 14;
    private readonly ChainSearch search;

    internal ChainGrowth(GridCurve followed, IReadOnlyList<Station[]> sides, int segments)
    {
        List<Point> places = [];
        List<double> feet = [];
        foreach (Station[] side in sides)
        {
            int hint = 0;
            foreach (Station station in side)
            {
                places.Add(station.Place);
                feet.Add(followed.Foot(station.Place, ref hint).S);
            }
        }

        search = new ChainSearch(
            [.. places],
            [.. feet],
            [.. places.Select(_ => 1.0)],
            followed.Kappa,
            followed.StepMm,
            followed.Places[0].X,
            segments
        );
        search.Run(FirstSteps);
    }

    internal HalfChain Chain => search.Chain;

    /// <summary>One segment more.</summary>
    internal void Grow()
    {
        search.Grow();
        search.Run(MoreSteps);
    }
}

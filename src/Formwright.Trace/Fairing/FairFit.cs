namespace Formwright.Trace.Fairing;

/// <summary>The fair curves of one or both sides of a trace, each on its own.</summary>
/// <param name="Sides">The sides, in the order given.</param>
/// <param name="Candidate">The shape that the curves rather have.</param>
/// <param name="WaveMm">Waves of this length are followed by half, mm.</param>
/// <param name="Price">Length of the description that the fit is (see <see cref="Of"/>); for tests.</param>
internal sealed record FairFit(
    IReadOnlyList<FairHalf> Sides,
    Candidate Candidate,
    double WaveMm,
    double Price
)
{
    /// <summary>
    /// Waves that are tried, stiffest first, mm. Lengths of a body of half perimeter <see cref="UsualLengthMm"/>; others in proportion.
    /// </summary>
    private static readonly double[] WavesMm = [220, 160, 120, 90, 70];

    private const double UsualLengthMm = 700;

    /// <summary>What a bump costs beside half a wave that the curve may bend more (tuned).</summary>
    private const double BumpPrice = 3;

    /// <summary>What a whole outline of bumps costs (tuned).</summary>
    private const double SharePrice = 8;

    /// <summary>What a stretch costs where the shape is not understood (tuned).</summary>
    private const double ClosedPrice = 5;

    /// <summary>A shape with more stretches on a side that are not understood is passed over, unless there is no other (tuned).</summary>
    private const int FewClosed = 3;

    /// <summary>
    /// Fits both sides with the stiffest curve that leaves few bumps. Each way to describe the trace has a price, one for each figure that
    /// it takes; the cheapest wins (the idea of the minimum description length, Rissanen 1978).
    /// </summary>
    /// <param name="halves">One or two sides, followed.</param>
    /// <param name="smallestMm">Lowest find that is masked, mm.</param>
    internal static FairFit? Of(IReadOnlyList<FollowedHalf> halves, double smallestMm)
    {
        IReadOnlyList<Station[]> stations = [.. halves.Select(half => half.Stations)];
        GridCurve followed = halves[0].Curve;
        double noise = halves.Max(half => half.StationNoiseMm);
        IReadOnlyList<ShapePrior> priors = ShapePrior.Of(followed, stations, noise);
        FairFit? best =
            Cheapest(halves, priors, stations, smallestMm, FewClosed)
            ?? Cheapest(halves, priors, stations, smallestMm, int.MaxValue);
        if (best?.Candidate.Prior is not null && best.Sides.Any(side => side.Finds.Count > 0))
        {
            // The features once more, without the bumps.
            IReadOnlyList<Station[]> clean = [.. best.Sides.Select(side => side.Stations)];
            IReadOnlyList<ShapePrior> cleaner = ShapePrior.Of(best.Sides[0].Curve, clean, noise);
            FairFit? again = Cheapest(
                halves,
                cleaner,
                stations,
                smallestMm,
                FewClosed,
                best.Price + 0.5,
                onlyPriors: true
            );
            best = again ?? best;
        }

        return best;
    }

    private static FairFit? Cheapest(
        IReadOnlyList<FollowedHalf> halves,
        IReadOnlyList<ShapePrior> priors,
        IReadOnlyList<Station[]> stations,
        double smallestMm,
        int mostClosed,
        double limit = double.PositiveInfinity,
        bool onlyPriors = false
    )
    {
        GridCurve followed = halves[0].Curve;
        double stiffest = 2 * UsualLengthMm / WavesMm[0];
        FairFit? best = null;
        foreach (
            Candidate candidate in Candidates.Of(
                priors,
                followed,
                stations,
                () => (best?.Price ?? limit) - stiffest
            )
        )
        {
            if (onlyPriors && candidate.Prior is null)
            {
                break;
            }

            foreach (double usual in WavesMm)
            {
                double wave = usual * followed.LengthMm / UsualLengthMm;
                double price = candidate.Price + (2 * followed.LengthMm / wave);
                if (price >= (best?.Price ?? limit))
                {
                    break;
                }

                // What both sides may cost, if one of them takes it all.
                double left = halves.Count * ((best?.Price ?? limit) - price) / ClosedPrice;
                int affordable = left < int.MaxValue ? (int)left : int.MaxValue;
                FairHalf?[] fitted = new FairHalf?[halves.Count];
                Parallel.For(
                    0,
                    halves.Count,
                    i =>
                        fitted[i] = FairHalf.Of(
                            halves[i],
                            candidate.Start ?? halves[i].Curve,
                            candidate.Shape,
                            wave,
                            smallestMm,
                            Math.Min(mostClosed, affordable)
                        )
                );
                List<FairHalf> sides = [.. fitted.OfType<FairHalf>()];
                price += sides.Sum(PriceOf) / halves.Count;
                if (sides.Count == halves.Count && price < (best?.Price ?? limit))
                {
                    best = new FairFit(sides, candidate, wave, price);
                }
            }
        }

        return best;
    }

    private static double PriceOf(FairHalf fair) =>
        (BumpPrice * fair.Finds.Count)
        + (SharePrice * fair.BumpShare)
        + (ClosedPrice * fair.Closed.Count);
}

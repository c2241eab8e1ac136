using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>
/// The minimum-variation outline whose features fit a trace best. The fair curve of a trace is measured against it, so that it may turn
/// sharply at bouts and waist without following bumps.
/// </summary>
/// <param name="Features">The features that fit best.</param>
/// <param name="Outline">Their outline, from (0, 0).</param>
/// <param name="HeelUMm">Where its heel lies in the trace, mm.</param>
internal sealed record ShapePrior(OutlineFeatures Features, Outline Outline, double HeelUMm)
{
    /// <summary>Change of a length for its derivative, mm: large beside the solver's last digits, small beside the outline.</summary>
    private const double ProbeMm = 0.5;

    /// <summary>Tolerance of the outlines on the way, mm.</summary>
    private const double CoarseMm = 0.1;

    /// <summary>Change of a radius for its derivative, as a share of it.</summary>
    private const double ProbeShare = 0.02;

    /// <summary>Typical misfit over which the radii are fitted as well, in standard deviations of a station (tuned).</summary>
    private const double Loose = 1.5;

    private enum Entry
    {
        Heel,
        BodyLength,
        UpperU,
        UpperWidth,
        WaistU,
        WaistWidth,
        LowerU,
        LowerWidth,
        HeelFlat,
        TailFlat,
        UpperRadius,
        WaistRadius,
        LowerRadius,
        HeelRadius,
        TailRadius,
        Count,
    }

    /// <summary>
    /// Finds the features: the plain outline that fits best, and where that one does not hold, one whose radii are fitted as well. Empty
    /// where the curve has no bouts and waist, or no outline meets them.
    /// </summary>
    /// <param name="curve">A curve that follows the trace.</param>
    /// <param name="sides">The stations of each side.</param>
    /// <param name="noiseMm">Standard deviation of a station, mm.</param>
    internal static IReadOnlyList<ShapePrior> Of(
        GridCurve curve,
        IReadOnlyList<Station[]> sides,
        double noiseMm
    )
    {
        if (FeaturePlaces.Of(curve) is not { } turns)
        {
            return [];
        }

        double heel = curve.Places[0].X;
        double[] start = new double[(int)Entry.Count];
        start[(int)Entry.Heel] = heel;
        start[(int)Entry.BodyLength] = curve.Places[curve.Last].X - heel;
        for (int i = 0; i < 3; i++)
        {
            start[(int)Entry.UpperU + (2 * i)] = turns[i].X - heel;
            start[(int)Entry.UpperWidth + (2 * i)] = 2 * turns[i].Y;
        }

        ShapeDescent descent = new(curve.Last, sides);
        ShapeDescent.Result? best = descent.Run(start);
        start[(int)Entry.HeelFlat] = FlatMm(curve, atTail: false);
        start[(int)Entry.TailFlat] = FlatMm(curve, atTail: true);
        if (start[(int)Entry.HeelFlat] > 0 || start[(int)Entry.TailFlat] > 0)
        {
            ShapeDescent.Result? flat = descent.Run(start);
            best = best is null || flat?.Cost < 0.8 * best.Cost ? flat ?? best : best;
        }

        if (best is null)
        {
            return [];
        }

        best = WithoutFeature(best, descent, curve.Last, sides, turns, noiseMm);
        ShapeDescent.Result? richer =
            best.TypicalMm > Math.Max(0.01, Loose * noiseMm) ? descent.Run(WithRadii(best)) : null;
        return richer is null ? [best.Prior] : [best.Prior, richer.Prior];
    }

    /// <summary>
    /// A bump on a bout or in the waist pulls that feature along. Where something is left over, the features are sought once more without
    /// the stations around each of them in turn, and what holds the most stations closely wins.
    /// </summary>
    private static ShapeDescent.Result WithoutFeature(
        ShapeDescent.Result best,
        ShapeDescent descent,
        int steps,
        IReadOnlyList<Station[]> sides,
        Point[] turns,
        double noiseMm
    )
    {
        double reach = Math.Max(0.05, 6 * noiseMm);
        double least = descent.Cost(best, reach);
        double quiet = 2 * Math.Max(noiseMm * noiseMm, 1e-4) * sides.Sum(side => side.Length);
        foreach (Point turn in turns)
        {
            if (least < quiet)
            {
                break;
            }

            IReadOnlyList<Station[]> others =
            [
                .. sides.Select(side =>
                    side.Select(station =>
                            station with
                            {
                                IsBump =
                                    station.IsBump || station.Place.DistanceTo(turn) < AroundMm,
                            }
                        )
                        .ToArray()
                ),
            ];
            if (new ShapeDescent(steps, others).Run(best.Entries) is { } other)
            {
                double cost = descent.Cost(other, reach);
                if (cost < 0.9 * least)
                {
                    (best, least) = (descent.Run(other.Entries) ?? other, cost);
                }
            }
        }

        return best;
    }

    /// <summary>Half the length of a long bump and a margin, mm.</summary>
    private const double AroundMm = 40;

    /// <summary>The outline as a curve in the trace's frame.</summary>
    internal GridCurve ToGrid(int steps) =>
        GridCurve.Of(Outline.Half.Moved(new Vector(HeelUMm, 0)), steps);

    internal static ShapePrior? Of(double[] v, double toleranceMm = CoarseMm)
    {
        double Value(Entry entry) => v[(int)entry];
        double? Radius(Entry entry) => Value(entry) > 0 ? Value(entry) : null;
        OutlineFeatures features = new(
            Value(Entry.BodyLength),
            new(Value(Entry.UpperU), Value(Entry.UpperWidth), Radius(Entry.UpperRadius)),
            new(Value(Entry.WaistU), Value(Entry.WaistWidth), Radius(Entry.WaistRadius)),
            new(Value(Entry.LowerU), Value(Entry.LowerWidth), Radius(Entry.LowerRadius))
        )
        {
            HeelFlatMm = Math.Max(0, Value(Entry.HeelFlat)),
            TailFlatMm = Math.Max(0, Value(Entry.TailFlat)),
            HeelRadiusMm = Radius(Entry.HeelRadius),
            TailRadiusMm = Radius(Entry.TailRadius),
        };
        return MinimumVariation.Solve(features, toleranceMm).Outline is { } outline
            ? new ShapePrior(features, outline, Value(Entry.Heel))
            : null;
    }

    /// <summary>Entries that a fit may change: those of a start that are not 0; the heel and the lengths always.</summary>
    internal static List<int> Free(double[] start) =>
        [.. Enumerable.Range(0, start.Length).Where(i => i < (int)Entry.HeelFlat || start[i] > 0)];

    internal static double Probe(int entry, double value) =>
        entry >= (int)Entry.UpperRadius ? ProbeShare * value : ProbeMm;

    private static double[] WithRadii(ShapeDescent.Result from)
    {
        double[] v = (double[])from.Entries.Clone();
        Chain half = from.Prior.Outline.Half;
        OutlineFeatures features = from.Prior.Features;
        v[(int)Entry.UpperRadius] = RadiusAt(from.Prior, features.UpperBout.UMm);
        v[(int)Entry.WaistRadius] = RadiusAt(from.Prior, features.Waist.UMm);
        v[(int)Entry.LowerRadius] = RadiusAt(from.Prior, features.LowerBout.UMm);
        v[(int)Entry.HeelRadius] =
            features.HeelFlatMm > 0 ? 0 : Math.Min(2000, half.Start.RadiusMm);
        v[(int)Entry.TailRadius] = features.TailFlatMm > 0 ? 0 : Math.Min(2000, half.End.RadiusMm);
        return v;
    }

    private static double RadiusAt(ShapePrior prior, double uMm) =>
        prior.Outline.AtStation(uMm)?.Curve.RadiusMm ?? 0;

    /// <summary>Full width of what looks straight at an end, mm; 0 where the curve is round there.</summary>
    private static double FlatMm(GridCurve curve, bool atTail)
    {
        // Straight is less than a fifth of the curvature of a circle around the body (tuned).
        double limit = 0.2 * Math.PI / curve.LengthMm;
        int count = 0;
        while (
            count < curve.Last / 4
            && Math.Abs(curve.Kappa[atTail ? curve.Last - count : count]) < limit
        )
        {
            count++;
        }

        double half = count * curve.StepMm;
        return half > 8 ? 2 * half : 0;
    }
}

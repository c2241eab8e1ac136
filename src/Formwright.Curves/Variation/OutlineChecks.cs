namespace Formwright.Curves.Variation;

/// <summary>What is wrong with features before, and with their curve after, it is computed.</summary>
internal static class OutlineChecks
{
    private const double LongestMm = 10_000;
    private const double LargestRadiusMm = 1_000_000;

    /// <summary>Features that no curve can meet; all of them at once.</summary>
    internal static IReadOnlyList<OutlineProblem> Of(OutlineFeatures features)
    {
        List<OutlineProblem> problems = [];
        OutlineStation upper = features.UpperBout;
        OutlineStation waist = features.Waist;
        OutlineStation lower = features.LowerBout;
        Size(OutlineFeature.Tail, features.BodyLengthMm, LongestMm);
        Station(OutlineFeature.UpperBout, upper);
        Station(OutlineFeature.Waist, waist);
        Station(OutlineFeature.LowerBout, lower);
        End(OutlineFeature.Heel, features.HeelFlatMm, features.HeelRadiusMm, upper.WidthMm);
        End(OutlineFeature.Tail, features.TailFlatMm, features.TailRadiusMm, lower.WidthMm);
        if (problems.Count > 0)
        {
            return problems;
        }

        Order(OutlineFeature.Waist, waist.UMm, upper.UMm);
        Order(OutlineFeature.LowerBout, lower.UMm, Math.Max(waist.UMm, upper.UMm));
        Before(OutlineFeature.UpperBout, upper.UMm);
        Before(OutlineFeature.Waist, waist.UMm);
        Before(OutlineFeature.LowerBout, lower.UMm);
        double narrower = Math.Min(upper.WidthMm, lower.WidthMm);
        if (waist.WidthMm >= narrower)
        {
            problems.Add(
                new(OutlineFeature.Waist, OutlineFault.WaistNotNarrower, waist.WidthMm, narrower)
            );
        }

        return problems;

        void Size(OutlineFeature feature, double value, double limit)
        {
            if (!(value > 0 && value <= limit))
            {
                problems.Add(new(feature, OutlineFault.SizeOutOfRange, value, limit));
            }
        }

        void Station(OutlineFeature feature, OutlineStation station)
        {
            Size(feature, station.UMm, LongestMm);
            Size(feature, station.WidthMm, LongestMm);
            Size(feature, station.RadiusMm ?? 1, LargestRadiusMm);
        }

        void End(OutlineFeature feature, double flat, double? radius, double bout)
        {
            Size(feature, radius ?? 1, LargestRadiusMm);
            if (flat != 0)
            {
                Size(feature, flat, LongestMm);
                if (radius is { } asked)
                {
                    problems.Add(new(feature, OutlineFault.FlatAndRadius, flat, asked));
                }

                if (flat >= bout)
                {
                    problems.Add(new(feature, OutlineFault.FlatTooWide, flat, bout));
                }
            }
        }

        void Order(OutlineFeature feature, double station, double before)
        {
            if (station <= before)
            {
                problems.Add(new(feature, OutlineFault.StationOutOfOrder, station, before));
            }
        }

        void Before(OutlineFeature feature, double station)
        {
            if (station >= features.BodyLengthMm)
            {
                problems.Add(new(feature, OutlineFault.BeyondTail, station, features.BodyLengthMm));
            }
        }
    }

    /// <summary>Ends at which the outline is hollow on the centreline.</summary>
    internal static IReadOnlyList<OutlineProblem> HollowEnds(
        OutlineFeatures features,
        VariationOutline outline
    )
    {
        List<OutlineProblem> remarks = [];
        End(OutlineFeature.Heel, features.HeelFlatMm, outline.Half.Start.Curvature);
        End(OutlineFeature.Tail, features.TailFlatMm, outline.Half.End.Curvature);
        return remarks;

        void End(OutlineFeature feature, double flat, double kappa)
        {
            if (flat == 0 && kappa > 0)
            {
                remarks.Add(new(feature, OutlineFault.HollowEnd, 1 / kappa, 0));
            }
        }
    }

    /// <summary>What a computed outline has that no maker asked for.</summary>
    internal static IReadOnlyList<OutlineProblem> Of(
        OutlineFeatures features,
        VariationOutline outline
    )
    {
        List<OutlineProblem> problems = [];
        Chain half = outline.Half;
        double[] at = outline.At;
        for (int i = 1; i < 4; i++)
        {
            double kappa = half.At(at[i]).Curvature;
            double convex = i == 2 ? kappa : -kappa;
            if (!(convex > 0))
            {
                problems.Add(new((OutlineFeature)i, OutlineFault.NoTurn, 1 / convex, 0));
            }
        }

        bool allTurn = problems.Count == 0;
        IReadOnlyList<ChainPoint> turns = half.TangentsAlong(0);
        foreach (ChainPoint turn in turns)
        {
            int nearest = 1;
            for (int i = 2; i < 4; i++)
            {
                if (Math.Abs(at[i] - turn.ArcLengthMm) < Math.Abs(at[nearest] - turn.ArcLengthMm))
                {
                    nearest = i;
                }
            }

            bool isFeature = Math.Abs(at[nearest] - turn.ArcLengthMm) < 1e-3;
            if (turn.Position.Y <= 0)
            {
                Add(turn.ArcLengthMm, OutlineFault.CrossesCentreline, turn.Position.Y, 0);
            }
            else if (!isFeature && allTurn)
            {
                Add(
                    turn.ArcLengthMm,
                    OutlineFault.ExtraTurn,
                    turn.Position.X,
                    half.At(at[nearest]).Position.X
                );
            }
        }

        if (problems.Count == 0 && SelfCrossing.First(half) is { } crossing)
        {
            Add(crossing.ArcLengthMm, OutlineFault.Loop, crossing.Position.X, 0);
        }

        return problems;

        void Add(double arcLength, OutlineFault fault, double measured, double limit)
        {
            int span = 0;
            while (span < 3 && at[span + 1] <= arcLength)
            {
                span++;
            }

            OutlineProblem problem = new((OutlineFeature)span, fault, measured, limit);
            if (!problems.Any(known => known.Feature == problem.Feature && known.Fault == fault))
            {
                problems.Add(problem);
            }
        }
    }
}

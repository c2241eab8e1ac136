namespace Formwright.Curves.Variation;

/// <summary>From features to a first curve with few shape functions, with fixed curvatures brought in by degrees.</summary>
internal sealed class VariationStart
{
    /// <summary>A fixed curvature is brought in by at least this share at a time; smaller steps were never seen to help.</summary>
    private const double SmallestStep = 1.0 / 16;

    private readonly OutlineFeatures features;
    private readonly Point[] places;
    private readonly double[] angles = [0.5 * Math.PI, 0, 0, 0, -0.5 * Math.PI];
    private readonly double?[] goals;
    private double[] natural = [];

    internal VariationStart(OutlineFeatures features)
    {
        this.features = features;
        ScaleMm = features.BodyLengthMm / 4;
        places =
        [
            Scaled(0, features.HeelFlatMm),
            Scaled(features.UpperBout.UMm, features.UpperBout.WidthMm),
            Scaled(features.Waist.UMm, features.Waist.WidthMm),
            Scaled(features.LowerBout.UMm, features.LowerBout.WidthMm),
            Scaled(features.BodyLengthMm, features.TailFlatMm),
        ];
        goals =
        [
            features.HeelFlatMm > 0 ? 0 : -ScaleMm / features.HeelRadiusMm,
            -ScaleMm / features.UpperBout.RadiusMm,
            ScaleMm / features.Waist.RadiusMm,
            -ScaleMm / features.LowerBout.RadiusMm,
            features.TailFlatMm > 0 ? 0 : -ScaleMm / features.TailRadiusMm,
        ];
    }

    /// <summary>Length of one unit of the scaled curve, mm.</summary>
    internal double ScaleMm { get; }

    internal int Iterations { get; private set; }

    /// <summary>Why <see cref="Solve"/> gave nothing.</summary>
    internal OutlineProblem Problem { get; private set; }

    /// <summary>What a curve that did not settle says: which span failed, and how.</summary>
    internal OutlineProblem Failure(VariationCurve curve)
    {
        Vector across = places[curve.FailedSpan + 1] - places[curve.FailedSpan];
        return new(
            (OutlineFeature)curve.FailedSpan,
            curve.RanOff ? OutlineFault.Loop : OutlineFault.NotFound,
            across.X * ScaleMm,
            Math.Abs(across.Y) * ScaleMm
        );
    }

    /// <summary>The curve of least variation with a number of bubbles in each span; null when <see cref="Problem"/> says why not.</summary>
    internal VariationCurve? Solve(int bubbles)
    {
        VariationCurve curve = First(bubbles);
        if (!curve.Settle())
        {
            Iterations = curve.Iterations;
            Problem = Failure(curve);
            return null;
        }

        natural = [.. Enumerable.Range(0, 5).Select(curve.CurvatureAt)];
        int[] asked = [.. Enumerable.Range(0, 5).Where(i => goals[i] is not null)];
        if (asked.Length == 0)
        {
            Iterations = curve.Iterations;
            return curve;
        }

        if (Fixed(curve, asked) is { } all)
        {
            Iterations = all.Iterations;
            return all;
        }

        // Which one is it? Brought in one after the other, the first that fails.
        foreach (int feature in asked)
        {
            if (asked.Length > 1 && Fixed(curve, [feature]) is { } next)
            {
                curve = next;
                continue;
            }

            bool isFlat = goals[feature] == 0;
            Problem = isFlat
                ? new(
                    (OutlineFeature)feature,
                    OutlineFault.FlatOutOfReach,
                    feature == 0 ? features.HeelFlatMm : features.TailFlatMm,
                    feature == 0 ? features.UpperBout.WidthMm : features.LowerBout.WidthMm
                )
                : OutOfReach(feature);
            Iterations = curve.Iterations;
            return null;
        }

        Iterations = curve.Iterations;
        return curve;
    }

    /// <summary>
    /// A curve with a turn too many or too few: where radii are fixed and the curve without them bends as it should, the radius that is
    /// farthest from the free one is to blame.
    /// </summary>
    internal IReadOnlyList<OutlineProblem> BlameRadii(IReadOnlyList<OutlineProblem> problems)
    {
        int[] radii = [.. Enumerable.Range(0, 5).Where(i => goals[i] is { } goal && goal != 0)];
        bool isFreeGood = natural[1] < 0 && natural[2] > 0 && natural[3] < 0;
        if (radii.Length == 0 || !isFreeGood)
        {
            return problems;
        }

        return
        [
            OutOfReach(
                radii.MaxBy(i => Math.Abs(Math.Log(Math.Abs(goals[i]!.Value / natural[i]))))
            ),
        ];
    }

    private OutlineProblem OutOfReach(int feature) =>
        new(
            (OutlineFeature)feature,
            OutlineFault.RadiusOutOfReach,
            ScaleMm / Math.Abs(goals[feature]!.Value),
            ScaleMm / Math.Abs(natural[feature])
        );

    private Point Scaled(double u, double width) => new(u / ScaleMm, 0.5 * width / ScaleMm);

    /// <summary>
    /// One straight curvature plot per span. Quarter turns at heel and tail: a circle of the mean half axis. S-shaped spans: a line from
    /// -k to k moves the curve sideways by kL²/6.
    /// </summary>
    private VariationCurve First(int bubbles)
    {
        double[] wanted = new double[8];
        double[] lengths = new double[4];
        for (int m = 0; m < 4; m++)
        {
            double du = places[m + 1].X - places[m].X;
            double dy = places[m + 1].Y - places[m].Y;
            if (m is 0 or 3)
            {
                double radius = 0.5 * (du + Math.Abs(dy));
                wanted[2 * m] = -1 / radius;
                wanted[(2 * m) + 1] = -1 / radius;
                lengths[m] = 0.5 * Math.PI * radius;
            }
            else
            {
                double k = 6 * dy / (du * du);
                double most = 3 / Math.Sqrt((du * du) + (dy * dy));
                k = Math.Clamp(k, -most, most);
                wanted[2 * m] = k;
                wanted[(2 * m) + 1] = -k;
                lengths[m] = Math.Sqrt((du * du) + (dy * dy));
            }
        }

        double[] nodes =
        [
            wanted[0],
            0.5 * (wanted[1] + wanted[2]),
            0.5 * (wanted[3] + wanted[4]),
            0.5 * (wanted[5] + wanted[6]),
            wanted[7],
        ];
        VariationSpan[] spans = new VariationSpan[4];
        for (int m = 0; m < 4; m++)
        {
            spans[m] = new VariationSpan(bubbles)
            {
                From = places[m],
                FromAngle = angles[m],
                To = places[m + 1],
                ToAngle = angles[m + 1],
                Length = lengths[m],
            };
            spans[m].Plot[0] = nodes[m];
            spans[m].Plot[1] = nodes[m + 1];
        }

        return new VariationCurve(spans, new bool[5]);
    }

    /// <summary>The curve with further curvatures fixed, in as few degrees as it takes; null when the last degrees get too small.</summary>
    private VariationCurve? Fixed(VariationCurve from, int[] which)
    {
        double[] natural = [.. which.Select(from.CurvatureAt)];
        VariationCurve reached = from.Copied();
        foreach (int feature in which)
        {
            reached.IsFixed[feature] = true;
        }

        double done = 0;
        double step = 1;
        while (done < 1)
        {
            double next = Math.Min(1, done + step);
            VariationCurve trial = reached.Copied();
            for (int i = 0; i < which.Length; i++)
            {
                double goal = goals[which[i]]!.Value;
                trial.SetCurvature(which[i], natural[i] + (next * (goal - natural[i])));
            }

            if (trial.Settle())
            {
                reached = trial;
                done = next;
            }
            else
            {
                step *= 0.5;
                if (step < SmallestStep)
                {
                    return null;
                }
            }
        }

        return reached;
    }
}

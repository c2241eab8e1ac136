namespace Formwright.Curves.Converting;

/// <summary>
/// Cubic Béziers with their ends and end tangents on the curve; the two handle lengths are the least-squares fit of the normal distances
/// at places between.
/// </summary>
/// <remarks>
/// Gauss-Newton with a weak pull towards the handles of an arc of the same turning, (4/3) tan(turning/4) × radius, which decides where
/// the piece is nearly straight and any handles do.
/// </remarks>
internal static class Beziers
{
    private const int FitPlaces = 7;

    // Places measured in each piece while it is fitted, and at the end.
    private const int Samples = 31;
    private const int FinalSamples = 95;

    internal static BezierPath Of(ICurve curve, double toleranceMm)
    {
        List<CubicBezier> pieces = [];
        double error = 0;
        foreach (CurveRun run in CurveRun.Of(curve))
        {
            List<double> cuts = Partition.Of(
                run,
                (from, to) => Error(run, from, to, Fit(run, from, to), Samples),
                5,
                (from, to) => Guess(run, from, to, toleranceMm),
                toleranceMm
            );
            for (int i = 1; i < cuts.Count; i++)
            {
                CubicBezier piece = Fit(run, cuts[i - 1], cuts[i]);
                error = Math.Max(error, Error(run, cuts[i - 1], cuts[i], piece, FinalSamples));
                pieces.Add(piece);
            }
        }

        return new(pieces, curve.IsClosed, error);
    }

    private static double Guess(CurveRun run, double from, double to, double toleranceMm)
    {
        double length = run.LengthMm(from, to);
        CurvePoint start = run.At(from);
        CurvePoint end = run.At(to);
        double turning = Math.Abs(end.Angle - start.Angle);
        return Math.Max(CurveRun.Needed(length, start, end, 1e4 * toleranceMm), turning / 1.5);
    }

    private static CubicBezier Fit(CurveRun run, double from, double to)
    {
        CurvePoint start = run.At(from);
        CurvePoint end = run.At(to);
        Vector t0 = start.Tangent;
        Vector t1 = end.Tangent;
        double turning = Math.Abs(end.Angle - start.Angle);
        double length = run.LengthMm(from, to);
        double usual =
            turning < 1e-6 || turning > 3
                ? length / 3
                : 4.0 / 3 * Math.Tan(0.25 * turning) / turning * length;
        double a = usual;
        double b = usual;
        Span<double> at = stackalloc double[FitPlaces];
        CurvePoint[] places = new CurvePoint[FitPlaces];
        for (int i = 0; i < FitPlaces; i++)
        {
            at[i] = (i + 1.0) / (FitPlaces + 1);
            places[i] = run.At(from + ((to - from) * at[i]));
        }

        for (int round = 0; round < 5; round++)
        {
            CubicBezier now = Made(start, end, t0, t1, a, b);
            double weak = 1e-9;
            double aa = weak;
            double ab = 0;
            double bb = weak;
            double ra = weak * (a - usual);
            double rb = weak * (b - usual);
            for (int i = 0; i < FitPlaces; i++)
            {
                at[i] = Project(now, places[i].Position, at[i]);
                double t = at[i];
                Vector normal = places[i].Normal;
                double miss = (now.At(t) - places[i].Position).Dot(normal);
                double da = 3 * (1 - t) * (1 - t) * t * t0.Dot(normal);
                double db = -3 * (1 - t) * t * t * t1.Dot(normal);
                aa += da * da;
                ab += da * db;
                bb += db * db;
                ra += da * miss;
                rb += db * miss;
            }

            double determinant = (aa * bb) - (ab * ab);
            double stepA = ((bb * ra) - (ab * rb)) / determinant;
            double stepB = ((aa * rb) - (ab * ra)) / determinant;
            a = Math.Clamp(a - stepA, 0.05 * length, 0.95 * length);
            b = Math.Clamp(b - stepB, 0.05 * length, 0.95 * length);
            if (Math.Abs(stepA) + Math.Abs(stepB) < 1e-9 * length)
            {
                break;
            }
        }

        return Made(start, end, t0, t1, a, b);
    }

    private static CubicBezier Made(
        CurvePoint start,
        CurvePoint end,
        Vector t0,
        Vector t1,
        double a,
        double b
    ) => new(start.Position, start.Position + (t0 * a), end.Position - (t1 * b), end.Position);

    private static double Error(
        CurveRun run,
        double from,
        double to,
        CubicBezier piece,
        int samples
    ) =>
        Peak.Of(
            samples,
            share =>
            {
                CurvePoint place = run.At(from + ((to - from) * share));
                Point foot = piece.At(Project(piece, place.Position, share));
                Vector away = foot - place.Position;
                return away.Dot(place.Normal) > 0 ? away.Length : -away.Length;
            }
        );

    /// <summary>Parameter of the Bézier's place nearest to another, by Newton's method from a near guess.</summary>
    private static double Project(CubicBezier piece, Point place, double t)
    {
        for (int round = 0; round < 4; round++)
        {
            Vector away = piece.At(t) - place;
            Vector speed = piece.Derivative(t);
            double squares = speed.Dot(speed);
            if (squares == 0)
            {
                break;
            }

            double step = away.Dot(speed) / squares;
            t = Math.Clamp(t - step, 0, 1);
            if (Math.Abs(step) < 1e-10)
            {
                break;
            }
        }

        return t;
    }
}

namespace Formwright.Curves.Converting;

/// <summary>Biarcs with their ends and end tangents on the curve; neighbours on one circle are made one arc.</summary>
internal static class Arcs
{
    // Places measured in each piece while it is fitted, and at the end.
    private const int Samples = 31;
    private const int FinalSamples = 95;

    /// <summary>Arcs that turn further are cut.</summary>
    private const double LargestTurningRad = Math.PI;

    /// <summary>Neighbours become one arc when it departs from them by less than this, mm: rounding, not geometry.</summary>
    private const double SameMm = 1e-9;

    internal static ArcPath Of(ICurve curve, double toleranceMm)
    {
        List<ArcPiece> pieces = [];
        List<bool> corners = [];
        double error = 0;
        CurvePoint? before = null;
        foreach (CurveRun run in CurveRun.Of(curve))
        {
            List<double> cuts = Partition.Of(
                run,
                (from, to) => Error(run, from, to, Samples),
                3,
                (from, to) => Guess(run, from, to, toleranceMm),
                toleranceMm
            );
            for (int i = 1; i < cuts.Count; i++)
            {
                error = Math.Max(error, Error(run, cuts[i - 1], cuts[i], FinalSamples));
                CurvePoint start = run.At(cuts[i - 1]);
                Biarc made = Biarc.Between(start, run.At(cuts[i]));
                corners.Add(before is { } end && CurveRun.IsCorner(end, start));
                pieces.Add(made.First);
                corners.Add(false);
                pieces.Add(made.Second);
                before = null;
            }

            before = run.At(run.End);
        }

        if (curve.IsClosed && before is { } last)
        {
            corners[0] = CurveRun.IsCorner(last, curve.At(0, 0));
        }

        Join(pieces, corners);
        error += pieces
            .Where(piece => piece.IsStraight)
            .Aggregate(0.0, (most, piece) => Math.Max(most, piece.SagittaMm));
        return new(
            [
                .. pieces.Select(piece => new ArcVertex(
                    piece.From,
                    piece.IsStraight ? 0 : piece.Bulge
                )),
                .. curve.IsClosed ? [] : new[] { new ArcVertex(pieces[^1].To, 0) },
            ],
            curve.IsClosed,
            error,
            Kink(pieces, corners, curve.IsClosed)
        );
    }

    /// <summary>
    /// A biarc over length h of a curve with dκ/ds = κ' misses it by about κ'h³/220 (measured); and no piece turns by more than 2 rad.
    /// </summary>
    private static double Guess(CurveRun run, double from, double to, double toleranceMm)
    {
        double length = run.LengthMm(from, to);
        CurvePoint start = run.At(from);
        CurvePoint end = run.At(to);
        double turning = Math.Abs(end.Angle - start.Angle);
        return Math.Max(CurveRun.Needed(length, start, end, 220 * toleranceMm), turning / 2);
    }

    private static double Error(CurveRun run, double from, double to, int samples)
    {
        CurvePoint start = run.At(from);
        CurvePoint end = run.At(to);
        double turning = Math.Abs(end.Angle - start.Angle);
        if (turning > 2.1)
        {
            return 1e3 * turning;
        }

        Biarc made = Biarc.Between(start, end);
        Point joint = made.First.To;
        Vector along = Vector.At(made.First.EndAngle);
        return Peak.Of(
            samples,
            share =>
            {
                Point place = run.At(from + ((to - from) * share)).Position;
                return (place - joint).Dot(along) < 0
                    ? made.First.DistanceFromCircle(place)
                    : made.Second.DistanceFromCircle(place);
            }
        );
    }

    private static void Join(List<ArcPiece> pieces, List<bool> corners)
    {
        for (int i = pieces.Count - 1; i > 0; i--)
        {
            ArcPiece one = pieces[i - 1];
            ArcPiece other = pieces[i];
            double length = one.LengthMm + other.LengthMm;
            double turning = one.TurningRad + other.TurningRad;
            if (
                !corners[i]
                && Math.Abs(turning) <= LargestTurningRad
                && Math.Abs(one.Curvature - other.Curvature) * length * length < 8 * SameMm
            )
            {
                pieces[i - 1] = new(one.From, other.To, Math.Tan(0.25 * turning));
                pieces.RemoveAt(i);
                corners.RemoveAt(i);
            }
        }
    }

    private static double Kink(List<ArcPiece> pieces, List<bool> corners, bool isClosed)
    {
        double kink = 0;
        for (int i = isClosed ? 0 : 1; i < pieces.Count; i++)
        {
            ArcPiece before = pieces[i > 0 ? i - 1 : ^1];
            double angle = Math.IEEERemainder(pieces[i].StartAngle - before.EndAngle, 2 * Math.PI);
            kink = corners[i] ? kink : Math.Max(kink, Math.Abs(angle));
        }

        return kink;
    }
}

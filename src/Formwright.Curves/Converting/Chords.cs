namespace Formwright.Curves.Converting;

/// <summary>Straight pieces with their ends on the curve.</summary>
internal static class Chords
{
    // At least this many places between the ends are measured.
    private const int Samples = 9;

    internal static Polyline Of(ICurve curve, double toleranceMm)
    {
        List<Point> points = [];
        double error = 0;
        foreach (CurveRun run in CurveRun.Of(curve))
        {
            List<double> cuts = Partition.Of(
                run,
                (from, to) => Error(run, from, to, Samples),
                2,
                (from, to) => Guess(run, from, to, toleranceMm),
                toleranceMm
            );
            if (points.Count > 0)
            {
                // The start of a run is exact, the end of the one before is computed.
                points.RemoveAt(points.Count - 1);
            }

            points.Add(run.At(0).Position);

            for (int i = 1; i < cuts.Count; i++)
            {
                error = Math.Max(error, Error(run, cuts[i - 1], cuts[i], Samples));
                points.Add(run.At(cuts[i]).Position);
            }
        }

        if (curve.IsClosed)
        {
            points.RemoveAt(points.Count - 1);
        }

        return new(points, curve.IsClosed, error);
    }

    /// <summary>A chord of length L misses an arc of curvature κ by κL²/8.</summary>
    private static double Guess(CurveRun run, double from, double to, double toleranceMm)
    {
        double kappa = Math.Abs(run.At(0.5 * (from + to)).Curvature);
        return run.LengthMm(from, to) * Math.Sqrt(kappa / (8 * toleranceMm));
    }

    private static double Error(CurveRun run, double from, double to, int samples)
    {
        Point start = run.At(from).Position;
        Vector chord = run.At(to).Position - start;
        double length = chord.Length;
        if (length == 0)
        {
            return Enumerable
                .Range(1, Samples)
                .Max(i =>
                    run.At(from + ((to - from) * i / (Samples + 1))).Position.DistanceTo(start)
                );
        }

        return Peak.Of(
            samples,
            share => chord.Cross(run.At(from + ((to - from) * share)).Position - start) / length
        );
    }
}

namespace Formwright.Curves.Tests;

/// <summary>
/// Another chain through the same features: every nodal curvature moves by a smooth random amount, then each span is brought back onto its
/// end (position and direction) by Newton steps in two low sine waves and the length, derivatives by differences.
/// </summary>
internal static class Perturbed
{
    internal static double Energy(Chain chain) =>
        chain.Segments.Sum(s => s.CurvatureRate * s.CurvatureRate * s.LengthMm);

    /// <returns>Null when the way back onto the features does not settle.</returns>
    internal static Chain? Of(Chain half, double[] amplitudes)
    {
        double[] ends =
        [
            0,
            .. half.TangentsAlong(0).Select(place => place.ArcLengthMm),
            half.LengthMm,
        ];
        List<EulerSegment> all = [];
        for (int span = 0; span < 4; span++)
        {
            EulerSegment[] old =
            [
                .. half.Segments.Where(
                    (_, i) =>
                        half.StartOf(i) > ends[span] - 1e-6
                        && half.StartOf(i) < ends[span + 1] - 1e-6
                ),
            ];
            double[] extra = [0, 0, 0];
            CurvePoint goal = old[^1].End;
            List<EulerSegment> made = [];
            double left = 1;
            for (int round = 0; round < 12 && left > 1e-9; round++)
            {
                made = Span(old, amplitudes.AsSpan(3 * span, 3), extra);
                double[] miss = Miss(made, goal);
                left = miss.Max(Math.Abs);
                double[,] slopes = new double[3, 3];
                for (int k = 0; k < 3; k++)
                {
                    double[] moved = [.. extra];
                    moved[k] += 1e-6;
                    double[] other = Miss(Span(old, amplitudes.AsSpan(3 * span, 3), moved), goal);
                    for (int i = 0; i < 3; i++)
                    {
                        slopes[i, k] = (other[i] - miss[i]) / 1e-6;
                    }
                }

                double[] step = Cramer(slopes, miss);
                for (int k = 0; k < 3; k++)
                {
                    extra[k] -= step[k];
                }
            }

            if (!(left < 1e-7))
            {
                return null;
            }

            all.AddRange(made);
        }

        return new Chain(all);
    }

    private static List<EulerSegment> Span(
        EulerSegment[] old,
        ReadOnlySpan<double> change,
        double[] extra
    )
    {
        double stretch = 1 + extra[2];
        List<EulerSegment> made = [];
        Point at = old[0].Start;
        double angle = old[0].StartAngle;
        for (int i = 0; i < old.Length; i++)
        {
            double from = old[i].StartCurvature + Wave((double)i / old.Length, change, extra);
            double to = old[i].EndCurvature + Wave((i + 1.0) / old.Length, change, extra);
            double length = old[i].LengthMm * stretch;
            EulerSegment segment = new(at, angle, from, (to - from) / length, length);
            made.Add(segment);
            (at, angle) = (segment.End.Position, segment.EndAngle);
        }

        return made;
    }

    /// <summary>0 at both ends, so that the curvature stays continuous from span to span.</summary>
    private static double Wave(double share, ReadOnlySpan<double> change, double[] extra)
    {
        double wave =
            (extra[0] * Math.Sin(Math.PI * share)) + (extra[1] * Math.Sin(2 * Math.PI * share));
        for (int k = 0; k < 3; k++)
        {
            wave += change[k] * Math.Sin((k + 3) * Math.PI * share);
        }

        return wave;
    }

    private static double[] Miss(List<EulerSegment> made, CurvePoint goal)
    {
        CurvePoint end = made[^1].End;
        return
        [
            end.Position.X - goal.Position.X,
            end.Position.Y - goal.Position.Y,
            100 * (end.Angle - goal.Angle),
        ];
    }

    private static double[] Cramer(double[,] m, double[] b)
    {
        double whole = Determinant(m);
        double[] x = new double[3];
        for (int k = 0; k < 3; k++)
        {
            double[,] replaced = (double[,])m.Clone();
            for (int i = 0; i < 3; i++)
            {
                replaced[i, k] = b[i];
            }

            x[k] = Determinant(replaced) / whole;
        }

        return x;
    }

    private static double Determinant(double[,] m) =>
        (m[0, 0] * ((m[1, 1] * m[2, 2]) - (m[1, 2] * m[2, 1])))
        - (m[0, 1] * ((m[1, 0] * m[2, 2]) - (m[1, 2] * m[2, 0])))
        + (m[0, 2] * ((m[1, 0] * m[2, 1]) - (m[1, 1] * m[2, 0])));
}

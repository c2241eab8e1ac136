namespace Formwright.Curves;

/// <summary>Where the tangent of an Euler spiral takes given directions.</summary>
internal static class SegmentAngles
{
    /// <summary>
    /// Arc lengths in (0, L) at which the tangent runs along <paramref name="angle"/> or against it, ascending: the roots of the
    /// quadratics θ(s) = angle + kπ.
    /// </summary>
    internal static void TangentsAlong(in EulerSegment segment, double angle, List<double> into)
    {
        double kappa = segment.StartCurvature;
        double rate = segment.CurvatureRate;
        double length = segment.LengthMm;
        double turn = rate == 0 ? length : -kappa / rate;
        int first = into.Count;
        if (turn > 0 && turn < length)
        {
            Monotone(segment, angle, 0, turn, into);
            Monotone(segment, angle, turn, length, into);
        }
        else
        {
            Monotone(segment, angle, 0, length, into);
        }

        into.Sort(first, into.Count - first, null);
    }

    /// <summary>Over [from, to] the angle is monotone.</summary>
    private static void Monotone(
        in EulerSegment segment,
        double angle,
        double from,
        double to,
        List<double> into
    )
    {
        double low = segment.AngleAt(from) - angle;
        double high = segment.AngleAt(to) - angle;
        bool rising = high >= low;
        if (!rising)
        {
            (low, high) = (high, low);
        }

        for (double k = Math.Ceiling(low / Math.PI); k * Math.PI <= high; k++)
        {
            double goal = angle + (k * Math.PI);
            double s = Root(segment, goal, from, to, rising);
            if (s > 0 && s < segment.LengthMm)
            {
                into.Add(s);
            }
        }
    }

    /// <summary>Root of θ(s) = goal in [from, to] by Newton steps kept inside a shrinking bracket.</summary>
    private static double Root(
        in EulerSegment segment,
        double goal,
        double from,
        double to,
        bool rising
    )
    {
        double s = 0.5 * (from + to);
        for (int i = 0; i < 80; i++)
        {
            double over = segment.AngleAt(s) - goal;
            if (over == 0)
            {
                return s;
            }

            if (over > 0 == rising)
            {
                to = s;
            }
            else
            {
                from = s;
            }

            double next = s - (over / segment.CurvatureAt(s));
            if (!(next > from && next < to))
            {
                next = 0.5 * (from + to);
            }

            if (Math.Abs(next - s) <= 1e-15 * segment.LengthMm)
            {
                return next;
            }

            s = next;
        }

        return s;
    }
}

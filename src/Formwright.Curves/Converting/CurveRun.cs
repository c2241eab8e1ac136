namespace Formwright.Curves.Converting;

/// <summary>
/// Spans of a curve that follow each other with neither a corner nor a step in curvature, under one parameter that runs from 0.
/// Conversions keep the ends of runs and are free between them.
/// </summary>
internal sealed class CurveRun
{
    /// <summary>A change of direction beyond this is a corner, rad: rounding of joined segments stays far below.</summary>
    internal const double CornerRad = 1e-7;

    /// <summary>A change of curvature beyond this ends a run, 1/mm: a line that meets a 100 km arc.</summary>
    private const double CurvatureStep = 1e-8;

    private readonly ICurve curve;
    private readonly int first;
    private readonly double[] starts;
    private readonly double[] turns;

    private CurveRun(ICurve curve, int first, int count)
    {
        this.curve = curve;
        this.first = first;
        starts = new double[count + 1];
        for (int i = 0; i < count; i++)
        {
            starts[i + 1] = starts[i] + curve.SpanEnd(first + i);
        }

        // Angles run on from span to span: where an offset was stitched they may differ by full turns.
        turns = new double[count];
        for (int i = 1; i < count; i++)
        {
            double before = curve.At(first + i - 1, curve.SpanEnd(first + i - 1)).Angle;
            double after = curve.At(first + i, 0).Angle;
            double full = 2 * Math.PI;
            turns[i] = turns[i - 1] + (full * Math.Round((before - after) / full));
        }
    }

    internal double End => starts[^1];

    internal int SpanCount => starts.Length - 1;

    internal double StartOf(int span) => starts[span];

    internal static List<CurveRun> Of(ICurve curve)
    {
        List<CurveRun> runs = [];
        int first = 0;
        for (int i = 1; i <= curve.SpanCount; i++)
        {
            if (i < curve.SpanCount)
            {
                CurvePoint before = curve.At(i - 1, curve.SpanEnd(i - 1));
                CurvePoint after = curve.At(i, 0);
                if (
                    Math.Abs(after.Curvature - before.Curvature) <= CurvatureStep
                    && !IsCorner(before, after)
                )
                {
                    continue;
                }
            }

            CurveRun run = new(curve, first, i - first);
            if (run.End > 0)
            {
                runs.Add(run);
            }

            first = i;
        }

        return runs;
    }

    internal static bool IsCorner(CurvePoint before, CurvePoint after) =>
        Math.Abs(Math.IEEERemainder(after.Angle - before.Angle, 2 * Math.PI)) > CornerRad;

    /// <summary>
    /// Pieces for an error of κ'h³/divisor; where the curvature runs off to infinity (the cusp of an offset), no more than the
    /// chord's error of length × turning / 8 calls for.
    /// </summary>
    internal static double Needed(double length, CurvePoint start, CurvePoint end, double divisor)
    {
        double step = Math.Abs(end.Curvature - start.Curvature);
        double turning = Math.Abs(end.Angle - start.Angle);
        double atMost = Math.Sqrt(length * turning / divisor * 27);
        return step * length < 1 ? Math.Cbrt(step * length * length / divisor) : atMost;
    }

    internal CurvePoint At(double g)
    {
        (int span, double t) = Locate(g);
        CurvePoint at = curve.At(first + span, t);
        return at with { Angle = at.Angle + turns[span] };
    }

    /// <summary>Arc length between two parameters, mm.</summary>
    internal double LengthMm(double from, double to)
    {
        (int a, double s) = Locate(from);
        (int b, double t) = Locate(to);
        double sum = a == b ? curve.SpanLengthMm(first + a, s, t) : 0;
        if (a < b)
        {
            sum = curve.SpanLengthMm(first + a, s, curve.SpanEnd(first + a));
            for (int i = a + 1; i < b; i++)
            {
                sum += curve.SpanLengthMm(first + i, 0, curve.SpanEnd(first + i));
            }

            sum += curve.SpanLengthMm(first + b, 0, t);
        }

        return sum;
    }

    private (int Span, double T) Locate(double g)
    {
        int found = Array.BinarySearch(starts, g);
        int span = Math.Clamp(found >= 0 ? found : ~found - 1, 0, SpanCount - 1);
        return (span, Math.Clamp(g - starts[span], 0, curve.SpanEnd(first + span)));
    }
}

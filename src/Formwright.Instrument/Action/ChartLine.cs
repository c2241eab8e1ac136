namespace Formwright.Instrument.Action;

/// <summary>One line of the ramp-against-dome chart: where the saddle comes out at the same height.</summary>
/// <param name="SaddleMm">Saddle height, middle of the outermost strings, mm.</param>
/// <param name="Points">Dome under the saddle off the board against ramp, mm, by rising dome.</param>
public sealed record ChartLine(
    double SaddleMm,
    IReadOnlyList<(double DomeMm, double RampMm)> Points
)
{
    /// <summary>The part of the line between two ramps, ended on them: what a chart of that range shows. Empty where it runs outside.</summary>
    /// <param name="lowMm">Least ramp, mm.</param>
    /// <param name="highMm">Greatest ramp, mm.</param>
    public IReadOnlyList<(double DomeMm, double RampMm)> Within(double lowMm, double highMm)
    {
        List<(double DomeMm, double RampMm)> seen = [];
        for (int i = 1; i < Points.Count; i++)
        {
            ((double d0, double r0), (double d1, double r1)) = (Points[i - 1], Points[i]);
            double step = r1 - r0;
            double at = step == 0 ? 0 : (lowMm - r0) / step;
            double to = step == 0 ? 1 : (highMm - r0) / step;
            double from = Math.Max(0, Math.Min(at, to));
            double end = Math.Min(1, Math.Max(at, to));
            if (from > end || (step == 0 && (r0 < lowMm || r0 > highMm)))
            {
                continue;
            }

            (double, double) first = (d0 + (from * (d1 - d0)), r0 + (from * step));
            if (seen.Count == 0 || seen[^1] != first)
            {
                seen.Add(first);
            }

            seen.Add((d0 + (end * (d1 - d0)), r0 + (end * step)));
        }

        return seen;
    }
}

using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>Bouts and waist of a curve: where its half width turns.</summary>
internal static class FeaturePlaces
{
    /// <summary>A turn counts when the half width changes by more than this share of the largest on both sides of it (tuned).</summary>
    private const double Prominence = 0.01;

    /// <summary>Upper bout, waist and lower bout; null when the curve has not exactly these.</summary>
    internal static Point[]? Of(GridCurve curve)
    {
        ReadOnlySpan<Point> places = curve.Places;
        List<Point> turns = [];
        for (int i = 1; i < curve.Last; i++)
        {
            double before = places[i].Y - places[i - 1].Y;
            double after = places[i + 1].Y - places[i].Y;
            if (before * after < 0 || (before != 0 && after == 0))
            {
                double share = before - after != 0 ? 0.5 * (before + after) / (before - after) : 0;
                turns.Add(curve.At((i + share) * curve.StepMm).Position);
            }
        }

        // Small turns go in pairs, the smallest first.
        double least = turns.Count > 0 ? Prominence * turns.Max(turn => turn.Y) : 0;
        while (turns.Count > 1)
        {
            int smallest = 0;
            for (int i = 1; i < turns.Count - 1; i++)
            {
                if (Rise(turns, i) < Rise(turns, smallest))
                {
                    smallest = i;
                }
            }

            if (Rise(turns, smallest) >= least)
            {
                break;
            }

            turns.RemoveRange(smallest, 2);
        }

        return turns.Count == 3 && turns[1].Y < turns[0].Y && turns[1].Y < turns[2].Y
            ? [.. turns]
            : null;
    }

    private static double Rise(List<Point> turns, int i) => Math.Abs(turns[i + 1].Y - turns[i].Y);
}

using System.Runtime.InteropServices;

namespace Formwright.Trace.Fairing;

/// <summary>Lets curves come to rest on points or stations.</summary>
internal static class Settling
{
    /// <summary>A curve rests when no place moves farther, mm.</summary>
    private const double RestMm = 2e-4;

    /// <summary>
    /// Moves a curve onto the stations of one or both sides until it rests or the rounds are used up; null when they do not hold it.
    /// </summary>
    /// <param name="curve">Where it starts.</param>
    /// <param name="sides">The stations of each side; those on bumps are passed over.</param>
    /// <param name="waveMm">The wave that is followed by half, mm (<see cref="Smoother"/>).</param>
    /// <param name="prior">What shape the curve rather has.</param>
    /// <param name="rounds">Most rounds.</param>
    /// <param name="trustMm">
    /// Stations farther away than this count for nothing, nearer ones by Tukey's biweight; infinite for plain least squares.
    /// </param>
    internal static GridCurve? Onto(
        GridCurve curve,
        IReadOnlyList<Station[]> sides,
        double waveMm,
        Shape prior,
        int rounds,
        double trustMm = double.PositiveInfinity
    )
    {
        Smoother smoother = new(curve.Last);
        List<(double, double, double)> held = [];
        for (int round = 0; round < rounds; round++)
        {
            held.Clear();
            foreach (Station[] side in sides)
            {
                // However many stations there are, they weigh as much as one for each step of the curve.
                double weight =
                    curve.StepMm * (curve.Last + 1) / Math.Max(1, side.Length) / sides.Count;
                int hint = 0;
                foreach (Station station in side)
                {
                    (double s, double r) = curve.Foot(station.Place, ref hint);
                    double trust = station.IsBump ? 0 : Trust(r, trustMm);
                    if (trust > 0)
                    {
                        held.Add((s, r, weight * trust));
                    }
                }
            }

            double[]? moves = smoother.Step(
                curve,
                CollectionsMarshal.AsSpan(held),
                waveMm,
                prior.Kappa,
                prior.Hinges
            );
            double largest = moves is null ? double.NaN : moves.Max(Math.Abs);
            if (!(largest < curve.LengthMm))
            {
                return null;
            }

            curve = curve.Moved(moves);
            if (largest < RestMm)
            {
                break;
            }
        }

        return curve;
    }

    /// <summary>Arc length and distance of each station.</summary>
    internal static (double S, double R)[] Feet(GridCurve curve, ReadOnlySpan<Station> stations)
    {
        (double S, double R)[] feet = new (double, double)[stations.Length];
        int hint = 0;
        for (int i = 0; i < stations.Length; i++)
        {
            feet[i] = curve.Foot(stations[i].Place, ref hint);
        }

        return feet;
    }

    /// <summary>Tukey's biweight (Beaton &amp; Tukey 1974).</summary>
    internal static double Trust(double distance, double reach)
    {
        double share = distance / reach;
        return Math.Abs(share) >= 1 ? 0 : (1 - (share * share)) * (1 - (share * share));
    }
}

namespace Formwright.Trace.Fairing;

/// <summary>
/// Looks for places where stations leave a fair curve over a short length: the row of distances is compared with raised cosines of
/// several lengths (a matched filter), and the strongest match of each neighbourhood is kept.
/// </summary>
internal static class BumpScan
{
    /// <summary>Lengths that are looked for, mm.</summary>
    private static readonly double[] LengthsMm = [8, 11, 15, 21, 30, 42, 58];

    /// <summary>A match must be this many standard deviations of its own noise high: one false in 10⁹ tries of normal noise.</summary>
    internal const double Certainty = 6;

    /// <summary>A raised cosine from its top to its foot; a table, since it is asked for a hundred thousand times.</summary>
    private static readonly double[] Cosine =
    [
        .. Enumerable.Range(0, 1024).Select(i => 0.5 * (1 + Math.Cos(Math.PI * i / 1023))),
    ];

    /// <summary>A find: centre and length along the curve, fitted height (positive outwards), and its certainty.</summary>
    internal readonly record struct Find(double S, double LengthMm, double Height, double Z);

    /// <summary>The finds, strongest first.</summary>
    /// <param name="feet">Arc length and distance of the stations, in order.</param>
    /// <param name="noise">Standard deviation of a station, mm.</param>
    /// <param name="smallest">Lowest height that counts, mm.</param>
    internal static List<Find> Run(
        ReadOnlySpan<(double S, double R)> feet,
        double noise,
        double smallest
    )
    {
        List<Find> all = [];
        foreach (double length in LengthsMm)
        {
            double half = length / 2;
            int low = 0;
            int high = 0;
            for (int c = 0; c < feet.Length; c++)
            {
                double centre = feet[c].S;
                while (feet[low].S < centre - half)
                {
                    low++;
                }

                while (high < feet.Length && feet[high].S < centre + half)
                {
                    high++;
                }

                if (high - low < 4)
                {
                    continue;
                }

                Find find = Match(feet[low..high], centre, length, noise);
                if (find.Z >= Certainty && Math.Abs(find.Height) >= smallest)
                {
                    all.Add(find);
                }
            }
        }

        // How much of the misfit it explains decides, so that the right length wins over its neighbours.
        all.Sort((a, b) => b.Z.CompareTo(a.Z));
        List<Find> kept = [];
        foreach (Find find in all)
        {
            if (
                kept.All(other =>
                    Math.Abs(other.S - find.S) > 0.75 * (other.LengthMm + find.LengthMm)
                )
            )
            {
                kept.Add(find);
            }
        }

        return kept;
    }

    /// <summary>The match of one length at one place.</summary>
    internal static Find At(
        ReadOnlySpan<(double S, double R)> feet,
        double centre,
        double length,
        double noise
    )
    {
        int low = 0;
        while (low < feet.Length && feet[low].S < centre - (length / 2))
        {
            low++;
        }

        int high = low;
        while (high < feet.Length && feet[high].S < centre + (length / 2))
        {
            high++;
        }

        return Match(feet[low..high], centre, length, noise);
    }

    private static Find Match(
        ReadOnlySpan<(double S, double R)> feet,
        double centre,
        double length,
        double noise
    )
    {
        double sumKr = 0;
        double sumKk = 0;
        double scale = 2 * (Cosine.Length - 1.001) / length;
        foreach ((double s, double r) in feet)
        {
            // Feet may fall back a little where the curve is not settled: what lies outside the window counts for nothing.
            double at = Math.Abs(s - centre) * scale;
            double k = at < Cosine.Length ? Cosine[(int)at] : 0;
            sumKr += k * r;
            sumKk += k * k;
        }

        double height = sumKk > 0 ? sumKr / sumKk : 0;
        double z = Math.Abs(height) * Math.Sqrt(sumKk) / Math.Max(noise, 1e-6);
        return new Find(centre, length, height, z);
    }
}

namespace Formwright.Trace.Fairing;

/// <summary>The fair curve of one side, and where its stations leave it.</summary>
/// <param name="Curve">The fair curve.</param>
/// <param name="Stations">The stations, those on bumps marked.</param>
/// <param name="Finds">Where stations leave the curve over a short length, surest first.</param>
internal sealed record FairHalf(
    GridCurve Curve,
    Station[] Stations,
    IReadOnlyList<BumpScan.Find> Finds
)
{
    /// <summary>Stretches where the shape is not understood well enough to tell a bump.</summary>
    internal IReadOnlyList<(double FromMm, double ToMm)> Closed { get; init; } = [];

    private const int MostRounds = 10;
    private const int MostPasses = 8;

    /// <summary>Two finds nearer than this are not masked in the same round: the weaker may be an echo of the stronger, mm.</summary>
    private const double EchoMm = 90;

    /// <summary>Where so much of the length seems to be bumps at first sight, it is the shape that is wrong (tuned).</summary>
    private const double MostCover = 0.7;

    /// <summary>Share of the length that lies on bumps.</summary>
    internal double BumpShare => (double)Stations.Count(each => each.IsBump) / Stations.Length;

    /// <summary>Fits the fair curve, masking bumps one neighbourhood at a time; null when the stations do not hold it.</summary>
    /// <param name="half">The side.</param>
    /// <param name="start">Where the curve starts.</param>
    /// <param name="shape">What shape the curve rather has.</param>
    /// <param name="waveMm">The wave that is followed by half, mm.</param>
    /// <param name="smallestMm">Lowest find that is masked, mm.</param>
    /// <param name="mostClosed">With more stretches than this that are not understood, the fit is given up; the largest number for never.</param>
    internal static FairHalf? Of(
        FollowedHalf half,
        GridCurve start,
        Shape shape,
        double waveMm,
        double smallestMm,
        int mostClosed
    )
    {
        Station[] stations = (Station[])half.Stations.Clone();
        double noise = Math.Max(half.StationNoiseMm, 1e-3);
        // A first, cautious fit: what is far away waits outside.
        double trust = Math.Max(0.3, 8 * noise);
        if (
            Settling.Onto(start, [stations], waveMm, shape, 8) is not { } curve
            || Settling.Onto(curve, [stations], waveMm, shape, 6, trust) is not { } careful
        )
        {
            return null;
        }

        curve = careful;
        if (
            mostClosed < int.MaxValue
            && Cover(curve, BumpScan.Run(Settling.Feet(curve, stations), noise, smallestMm))
                > MostCover
        )
        {
            return null;
        }

        List<(double From, double To)> closed = [];
        for (int pass = 0; ; pass++)
        {
            if (Mask(half, ref curve, stations, shape, waveMm, smallestMm, closed) is not { } finds)
            {
                return null;
            }

            int before = closed.Count;
            foreach (BumpScan.Find find in finds)
            {
                if (!IsSteady(curve, stations, find, shape, waveMm, noise))
                {
                    closed.Add((find.S - (0.75 * find.LengthMm), find.S + (0.75 * find.LengthMm)));
                }
            }

            if (closed.Count > mostClosed)
            {
                return null;
            }

            if (closed.Count == before)
            {
                return new FairHalf(curve, stations, finds) { Closed = closed };
            }

            if (pass == MostPasses)
            {
                return null;
            }
        }
    }

    /// <summary>Share of the length that finds and their feet take.</summary>
    private static double Cover(GridCurve curve, List<BumpScan.Find> finds) =>
        finds.Sum(find => 1.5 * find.LengthMm) / curve.LengthMm;

    /// <summary>Masks finds and settles again until nothing changes.</summary>
    private static List<BumpScan.Find>? Mask(
        FollowedHalf half,
        ref GridCurve curve,
        Station[] stations,
        Shape shape,
        double waveMm,
        double smallestMm,
        List<(double From, double To)> closed
    )
    {
        double noise = Math.Max(half.StationNoiseMm, 1e-3);
        List<BumpScan.Find> finds = [];
        for (int round = 0; round < MostRounds; round++)
        {
            (double S, double R)[] feet = Settling.Feet(curve, stations);
            finds = BumpScan.Run(feet, noise, smallestMm);
            finds.RemoveAll(find => closed.Exists(each => find.S > each.From && find.S < each.To));
            if (!Mark(stations, feet, finds))
            {
                break;
            }

            if (Settling.Onto(curve, [stations], waveMm, shape, 5) is not { } next)
            {
                return null;
            }

            curve = next;
        }

        return finds;
    }

    /// <summary>A bump stays as high when more of its surroundings are left out of the fit; where the shape is not understood, the misfit grows.</summary>
    private static bool IsSteady(
        GridCurve curve,
        Station[] stations,
        BumpScan.Find find,
        Shape shape,
        double waveMm,
        double noise
    )
    {
        Station[] wider = (Station[])stations.Clone();
        (double S, double R)[] feet = Settling.Feet(curve, stations);
        for (int i = 0; i < wider.Length; i++)
        {
            if (Math.Abs(feet[i].S - find.S) <= Math.Max(1.1 * find.LengthMm, 8))
            {
                wider[i] = wider[i] with { IsBump = true };
            }
        }

        if (Settling.Onto(curve, [wider], waveMm, shape, 3) is not { } other)
        {
            return false;
        }

        (double S, double R)[] again = Settling.Feet(other, wider);
        double height = BumpScan.At(again, find.S, find.LengthMm, noise).Height;
        return Math.Abs(height - find.Height) <= Math.Max(0.03, 0.15 * Math.Abs(find.Height));
    }

    /// <summary>Marks the stations of the finds; false when nothing changed.</summary>
    private static bool Mark(
        Station[] stations,
        ReadOnlySpan<(double S, double R)> feet,
        List<BumpScan.Find> finds
    )
    {
        bool[] marks = new bool[stations.Length];
        foreach (BumpScan.Find find in finds)
        {
            bool leads = finds.TrueForAll(other =>
                other.Z <= find.Z || Math.Abs(other.S - find.S) > EchoMm
            );
            double reach = Math.Max(0.75 * find.LengthMm, 5);
            for (int i = 0; i < stations.Length; i++)
            {
                if (Math.Abs(feet[i].S - find.S) <= reach && (leads || stations[i].IsBump))
                {
                    marks[i] = true;
                }
            }
        }

        bool isChanged = false;
        for (int i = 0; i < stations.Length; i++)
        {
            isChanged |= stations[i].IsBump != marks[i];
            stations[i] = stations[i] with { IsBump = marks[i] };
        }

        return isChanged;
    }
}

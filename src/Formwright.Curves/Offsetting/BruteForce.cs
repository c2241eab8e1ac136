using Formwright.Curves.Converting;

namespace Formwright.Curves.Offsetting;

/// <summary>Distances by comparing all with all, then a local search on the exact source.</summary>
internal sealed class BruteForce
{
    /// <summary>A normal's end nearer than this to the offset distance should be on the offset, mm.</summary>
    private const double ClearMm = 1e-6;

    private readonly Chain source;
    private readonly double distance;
    private readonly double spacing;
    private readonly List<(int Segment, double S, Point Position)> samples = [];
    private double[]? sampled;

    internal BruteForce(Chain source, double distance, double spacing)
    {
        ArgumentNullException.ThrowIfNull(source);
        this.source = source;
        this.distance = Guard.Finite(distance);
        this.spacing = spacing;
        for (int i = 0; i < source.Segments.Length; i++)
        {
            EulerSegment segment = source.Segments[i];
            int parts = Math.Max(2, (int)Math.Ceiling(segment.LengthMm / spacing));
            for (int k = 0; k <= parts; k++)
            {
                double s = segment.LengthMm * k / parts;
                samples.Add((i, s, segment.PositionAt(s)));
            }
        }
    }

    internal OffsetAudit Audit(List<List<Point>> paths)
    {
        double wanted = Math.Abs(distance);
        (double Mm, Point At) near = default;
        (double Mm, Point At) far = default;
        int places = 0;
        foreach (Point place in paths.SelectMany(path => path))
        {
            double found = DistanceOf(place);
            places++;
            near = wanted - found > near.Mm ? (wanted - found, place) : near;
            far = found - wanted > far.Mm ? (found - wanted, place) : far;
        }

        (double Mm, Point At) missed = default;
        foreach (Point place in ShouldBe())
        {
            double off = paths.Count == 0 ? wanted : paths.Min(path => ToPolyline(path, place));
            if (off > missed.Mm && DistanceOf(place) >= wanted - ClearMm)
            {
                missed = (off, place);
            }
        }

        return new(near.Mm, near.At, far.Mm, far.At, missed.Mm, missed.At, places);
    }

    /// <summary>Ends of the source's normals, corners rounded.</summary>
    private IEnumerable<Point> ShouldBe()
    {
        foreach ((int segment, double s, _) in samples)
        {
            CurvePoint at = source.Segments[segment].At(s);
            yield return at.Position + (at.Normal * distance);
        }

        foreach (ChainJoin join in source.Joins)
        {
            if (join.KinkRad * distance < 0 && Math.Abs(join.KinkRad) > CurveRun.CornerRad)
            {
                CurvePoint at = source.At(join.ArcLengthMm % source.LengthMm);
                for (int k = 1; k < 8; k++)
                {
                    double angle = at.Angle - (join.KinkRad * k / 8);
                    yield return at.Position + (Vector.At(angle).Left * distance);
                }
            }
        }
    }

    private double DistanceOf(Point place)
    {
        sampled ??= new double[samples.Count];
        double least = double.PositiveInfinity;
        for (int i = 0; i < sampled.Length; i++)
        {
            sampled[i] = samples[i].Position.DistanceTo(place);
            least = Math.Min(least, sampled[i]);
        }

        double exact = least;
        for (int i = 0; i < sampled.Length; i++)
        {
            // Only where the curve could come nearer than the nearest sample, and only at the bottoms; a join is sampled from both
            // of its segments and both are searched.
            bool isLow =
                sampled[i] < least + (0.5 * spacing)
                && (i == 0 || sampled[i] <= sampled[i - 1] + 1e-9)
                && (i == sampled.Length - 1 || sampled[i] <= sampled[i + 1] + 1e-9);
            if (isLow)
            {
                exact = Math.Min(exact, Locally(samples[i].Segment, samples[i].S, place));
            }
        }

        return exact;
    }

    /// <summary>Golden-section search about a sample.</summary>
    private double Locally(int index, double s, Point place)
    {
        EulerSegment segment = source.Segments[index];
        double low = Math.Max(0, s - spacing);
        double high = Math.Min(segment.LengthMm, s + spacing);
        const double Golden = 0.6180339887498949;
        double a = high - (Golden * (high - low));
        double b = low + (Golden * (high - low));
        double da = segment.PositionAt(a).DistanceTo(place);
        double db = segment.PositionAt(b).DistanceTo(place);
        for (int i = 0; i < 26; i++)
        {
            if (da < db)
            {
                (high, b, db) = (b, a, da);
                a = high - (Golden * (high - low));
                da = segment.PositionAt(a).DistanceTo(place);
            }
            else
            {
                (low, a, da) = (a, b, db);
                b = low + (Golden * (high - low));
                db = segment.PositionAt(b).DistanceTo(place);
            }
        }

        return Math.Min(da, db);
    }

    private static double ToPolyline(List<Point> path, Point place)
    {
        double least = double.PositiveInfinity;
        double before = path[0].DistanceTo(place);
        for (int i = 1; i < path.Count; i++)
        {
            double after = path[i].DistanceTo(place);
            double length = path[i].DistanceTo(path[i - 1]);
            if (0.5 * (before + after - length) < least)
            {
                Vector chord = path[i] - path[i - 1];
                double share =
                    length == 0
                        ? 0
                        : Math.Clamp((place - path[i - 1]).Dot(chord) / (length * length), 0, 1);
                least = Math.Min(least, path[i - 1].Towards(path[i], share).DistanceTo(place));
            }

            before = after;
        }

        return least;
    }
}

using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>
/// Slots that may be worth cutting. Each is a straight line through the places where the bolts of all instruments would stand if every one were
/// touched at the same share of its rib; and the same with the shares drawn apart from the smallest instrument to the largest.
/// For one instrument a slot points along its bracket.
/// </summary>
internal static class SlotCandidates
{
    /// <summary>Bolts nearer together than this have no line of their own, mm.</summary>
    private const double NearMm = 6;
    private const int Shares = 84;
    private static readonly double[] Drawn = [0, -0.02, 0.02, -0.04, 0.04, -0.07, 0.07];

    /// <summary>Lines, longer than the bolts' places by <paramref name="spareMm"/> at both ends.</summary>
    public static IEnumerable<SlotLine> Of(
        IReadOnlyList<RibLine> ribs,
        IReadOnlyList<RibPose?[]> poses,
        double spareMm
    )
    {
        if (ribs.Count == 1)
        {
            return poses[0]
                .OfType<RibPose>()
                .Select(pose => Along(pose.UsualBolt, pose.Contact.Outward, spareMm));
        }

        double least = ribs.Min(rib => rib.ToMm - rib.FromMm);
        double most = ribs.Max(rib => rib.ToMm - rib.FromMm);
        double[] rank =
        [
            .. ribs.Select(rib =>
                most > least ? ((rib.ToMm - rib.FromMm - least) / (most - least)) - 0.5 : 0
            ),
        ];
        return Drawn.SelectMany(drawn =>
            Enumerable
                .Range(1, Shares - 1)
                .Select(i => Through(poses, rank, (double)i / Shares, drawn, spareMm))
                .OfType<SlotLine>()
        );
    }

    private static SlotLine Along(Point bolt, Vector outward, double spareMm) =>
        new(bolt - (outward * spareMm), bolt + (outward * spareMm));

    private static SlotLine? Through(
        IReadOnlyList<RibPose?[]> poses,
        double[] rank,
        double share,
        double drawn,
        double spareMm
    )
    {
        List<Point> bolts = [];
        Vector outward = new(0, 0);
        for (int m = 0; m < poses.Count; m++)
        {
            int at = (int)Math.Round((share + (drawn * rank[m])) * RibPoses.Count);
            if (at >= 0 && at <= RibPoses.Count && poses[m][at] is { } pose)
            {
                bolts.Add(pose.UsualBolt);
                outward += pose.Contact.Outward;
            }
        }

        if (bolts.Count == 0 || outward.Length == 0)
        {
            return null;
        }

        // Least squares across the line: its direction is the main axis of the places.
        Point centre = new(bolts.Average(p => p.X), bolts.Average(p => p.Y));
        double xx = bolts.Sum(p => (p.X - centre.X) * (p.X - centre.X));
        double yy = bolts.Sum(p => (p.Y - centre.Y) * (p.Y - centre.Y));
        double xy = bolts.Sum(p => (p.X - centre.X) * (p.Y - centre.Y));
        Vector along = Vector.At(0.5 * Math.Atan2(2 * xy, xx - yy));
        double spread =
            bolts.Max(p => (p - centre).Dot(along)) - bolts.Min(p => (p - centre).Dot(along));
        along = spread < NearMm ? outward * (1 / outward.Length) : along;
        along = along.Dot(outward) < 0 ? -along : along;
        double from = bolts.Min(p => (p - centre).Dot(along)) - spareMm;
        double to = bolts.Max(p => (p - centre).Dot(along)) + spareMm;
        return new SlotLine(centre + (along * from), centre + (along * to));
    }
}

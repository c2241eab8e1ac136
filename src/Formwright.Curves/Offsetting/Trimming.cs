namespace Formwright.Curves.Offsetting;

/// <summary>Cuts raw strands at their crossings, keeps the slices that are far enough from the source, and stitches them.</summary>
internal sealed class Trimming
{
    /// <summary>A slice is too near when it comes nearer than the offset by more than this, mm.</summary>
    private const double TooNearMm = 1e-6;

    private static readonly double[] Probes = [0.5, 0.25, 0.75, 0.05, 0.95];

    private readonly Chain source;
    private readonly List<Strand> strands;
    private readonly double distance;
    private readonly List<Slice> slices = [];

    internal Trimming(Chain source, List<Strand> strands, double distance)
    {
        this.source = source;
        this.strands = strands;
        this.distance = distance;
    }

    internal OffsetResult Run()
    {
        Crossings crossings = new(strands);
        crossings.Find();
        List<OffsetProblem> problems = [];
        if (crossings.IsIncomplete)
        {
            problems.Add(new(source.Start.Position, OffsetFault.TooManyCrossings));
        }

        for (int i = 0; i < strands.Count; i++)
        {
            if (!strands[i].IsCutter)
            {
                Slice(i, [.. crossings.Cuts.Where(cut => cut.Strand == i)]);
            }
        }

        HashSet<int> caps =
        [
            .. crossings.Cuts.Where(cut => strands[cut.Strand].IsCutter).Select(c => c.Crossing),
        ];
        return new(Stitch(caps, problems), problems);
    }

    private void Slice(int strand, List<Cut> cuts)
    {
        List<OffsetSpan> spans = strands[strand].Spans;
        cuts.Sort(
            (a, b) =>
                a == b ? 0
                : a.IsAfter(b) ? 1
                : -1
        );
        Cut start = new(strand, 0, 0, -1);
        Cut end = new(strand, spans.Count - 1, spans[^1].End, -1);
        if (!strands[strand].IsClosed)
        {
            cuts = [start, .. cuts, end];
            for (int i = 1; i < cuts.Count; i++)
            {
                Keep(cuts[i - 1], cuts[i], Between(spans, cuts[i - 1], cuts[i]));
            }
        }
        else if (cuts.Count == 0)
        {
            Keep(start, start, spans);
        }
        else
        {
            for (int i = 1; i < cuts.Count; i++)
            {
                Keep(cuts[i - 1], cuts[i], Between(spans, cuts[i - 1], cuts[i]));
            }

            Keep(
                cuts[^1],
                cuts[0],
                [.. Between(spans, cuts[^1], end), .. Between(spans, start, cuts[0])]
            );
        }
    }

    private static List<OffsetSpan> Between(List<OffsetSpan> spans, Cut from, Cut to)
    {
        List<OffsetSpan> parts = [];
        for (int i = from.Span; i <= to.Span; i++)
        {
            double start = i == from.Span ? from.T : 0;
            double end = i == to.Span ? to.T : spans[i].End;
            if (end > start)
            {
                parts.Add(spans[i].Part(start, end));
            }
        }

        return parts;
    }

    private void Keep(Cut from, Cut to, List<OffsetSpan> spans)
    {
        if (
            spans.Count == 0
            || EndsInside(from, spans[0].At(0))
            || EndsInside(to, spans[^1].At(spans[^1].End))
        )
        {
            return;
        }

        // Between crossings a slice is all far enough or all too near; places in every span guard against a crossing overlooked.
        ReadOnlySpan<double> probes = spans.Count > 2 ? Probes.AsSpan(0, 1) : Probes;
        foreach (OffsetSpan span in spans)
        {
            foreach (double share in probes)
            {
                if (IsTooNear(span.At(share * span.End).Position))
                {
                    return;
                }
            }
        }

        slices.Add(new(from, to, spans));
    }

    /// <summary>
    /// A strand's own end is a cusp or an inner corner, and too near to the source however short the slice that leads to it; only
    /// the ends of an open source are good ends. A loop without crossings has no end.
    /// </summary>
    private bool EndsInside(Cut cut, CurvePoint at) =>
        cut.Crossing < 0 && !strands[cut.Strand].IsClosed && !IsSourceEnd(at.Position);

    private bool IsTooNear(Point place) =>
        source.Nearest(place).DistanceMm < Math.Abs(distance) - TooNearMm;

    private List<OffsetPath> Stitch(HashSet<int> caps, List<OffsetProblem> problems)
    {
        List<OffsetPath> paths = [];
        HashSet<Slice> left = [.. slices];
        // Open ends first, so that open paths are whole; then loops.
        HashSet<int> ends = [.. slices.Select(slice => slice.To.Crossing)];
        foreach (
            Slice slice in slices
                .Where(slice => slice.From.Crossing < 0 || !ends.Contains(slice.From.Crossing))
                .Concat(slices)
        )
        {
            if (left.Remove(slice))
            {
                OffsetPath path = Follow(slice, left, caps, problems);
                if (!path.IsClosed || path.LengthMm > TooNearMm)
                {
                    paths.Add(path);
                }
            }
        }

        return paths;
    }

    private OffsetPath Follow(
        Slice first,
        HashSet<Slice> left,
        HashSet<int> caps,
        List<OffsetProblem> problems
    )
    {
        List<OffsetSpan> spans = [.. first.Spans];
        Slice last = first;
        bool isLoop = first.From == first.To && first.From.Crossing < 0;
        while (!isLoop && last.To.Crossing >= 0)
        {
            if (last.To.Crossing == first.From.Crossing)
            {
                isLoop = true;
                break;
            }

            Slice? next = left.FirstOrDefault(slice => slice.From.Crossing == last.To.Crossing);
            if (next is null)
            {
                break;
            }

            left.Remove(next);
            spans.AddRange(next.Spans);
            last = next;
        }

        if (!isLoop)
        {
            End(first.From, spans[0].At(0).Position);
            End(last.To, spans[^1].At(spans[^1].End).Position);
        }

        return new(spans, distance, isLoop);

        void End(Cut cut, Point place)
        {
            bool isNatural = cut.Crossing >= 0 ? caps.Contains(cut.Crossing) : IsSourceEnd(place);
            if (!isNatural)
            {
                problems.Add(new(place, OffsetFault.OpenEnd));
            }
        }
    }

    private bool IsSourceEnd(Point place)
    {
        if (source.IsClosed)
        {
            return false;
        }

        CurvePoint start = source.Start;
        CurvePoint end = source.End;
        return place.DistanceTo(start.Position + (start.Normal * distance)) < TooNearMm
            || place.DistanceTo(end.Position + (end.Normal * distance)) < TooNearMm;
    }
}

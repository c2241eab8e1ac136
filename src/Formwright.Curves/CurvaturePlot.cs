namespace Formwright.Curves;

/// <summary>
/// The curvature plot of half an outline, from heel to tail, as straight pieces: a chain of Euler spirals that leaves the centreline straight
/// across it. It is how a traced outline is written down.
/// </summary>
public sealed class CurvaturePlot
{
    private const int MostRounds = 20;
    private readonly double[] lengths;
    private readonly double[] curvatures;

    /// <param name="lengthsMm">Length of each piece, mm, above 0.</param>
    /// <param name="curvatures">κ at the ends of the pieces, 1/mm, one more than lengths; below 0 on the bouts (body frame).</param>
    /// <exception cref="ArgumentException">The counts don't fit, or a figure is not finite, or a length not above 0.</exception>
    public CurvaturePlot(IReadOnlyList<double> lengthsMm, IReadOnlyList<double> curvatures)
    {
        ArgumentNullException.ThrowIfNull(lengthsMm);
        ArgumentNullException.ThrowIfNull(curvatures);
        if (lengthsMm.Count == 0 || curvatures.Count != lengthsMm.Count + 1)
        {
            throw new ArgumentException(
                "One curvature more than lengths is needed.",
                nameof(curvatures)
            );
        }

        lengths = [.. lengthsMm];
        this.curvatures = [.. curvatures];
        foreach (double length in lengths)
        {
            Guard.Positive(length);
        }

        foreach (double curvature in curvatures)
        {
            Guard.Finite(curvature);
        }
    }

    /// <summary>Length of each piece, mm.</summary>
    public IReadOnlyList<double> LengthsMm => lengths;

    /// <summary>κ at the ends of the pieces, 1/mm.</summary>
    public IReadOnlyList<double> Curvatures => curvatures;

    /// <summary>Length of the half outline, mm.</summary>
    public double LengthMm => lengths.Sum();

    /// <summary>The plot of an outline, one piece for each segment; a jump of the curvature between two segments becomes its mean.</summary>
    public static CurvaturePlot Of(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        IReadOnlyList<EulerSegment> segments =
        [
            .. outline.Half.Segments.Where(each => each.LengthMm > 1e-9),
        ];
        double[] kappa = new double[segments.Count + 1];
        for (int j = 0; j <= segments.Count; j++)
        {
            kappa[j] =
                j == 0 ? segments[0].StartCurvature
                : j == segments.Count ? segments[^1].EndCurvature
                : 0.5 * (segments[j - 1].EndCurvature + segments[j].StartCurvature);
        }

        return new CurvaturePlot([.. segments.Select(each => each.LengthMm)], kappa);
    }

    /// <summary>The half outline, wherever it ends.</summary>
    public Chain ToChain() => new(Segments(curvatures));

    /// <summary>
    /// The plot changed as little as possible (least squares of the curvatures) so that the half ends on the centreline and straight
    /// across it; null where that needs more than a small change.
    /// </summary>
    /// <param name="mostMm">How far off the end may lie to begin with, mm.</param>
    public CurvaturePlot? Closed(double mostMm = double.PositiveInfinity)
    {
        double[] kappa = (double[])curvatures.Clone();
        for (int round = 0; round < MostRounds; round++)
        {
            if (!(kappa.Max(Math.Abs) * LengthMm < 1000))
            {
                return null;
            }

            Chain half = new(Segments(kappa));
            double y = half.End.Position.Y;
            double angle = half.End.Angle + (0.5 * Math.PI);
            if (round == 0 && !(Math.Abs(y) + (Math.Abs(angle) * LengthMm) <= mostMm))
            {
                return null;
            }

            if (Math.Abs(y) < 1e-9 && Math.Abs(angle) < 1e-12)
            {
                return new CurvaturePlot(lengths, kappa);
            }

            (double[] turn, double[] rise) = Slopes(half);
            double tt = turn.Sum(each => each * each);
            double rr = rise.Sum(each => each * each);
            double tr = turn.Zip(rise, (a, b) => a * b).Sum();
            double det = (tt * rr) - (tr * tr);
            if (!(det > 0))
            {
                return null;
            }

            double alongTurn = ((-angle * rr) + (y * tr)) / det;
            double alongRise = ((-y * tt) + (angle * tr)) / det;
            for (int j = 0; j < kappa.Length; j++)
            {
                kappa[j] += (alongTurn * turn[j]) + (alongRise * rise[j]);
            }
        }

        return null;
    }

    /// <summary>The outline; null where the half does not end on the centreline, straight across it and beyond the heel (see <see cref="Closed"/>).</summary>
    public Outline? ToOutline()
    {
        Chain half = ToChain();
        return Math.Abs(half.End.Position.Y) <= Chain.JoinToleranceMm && half.End.Position.X > 0
            ? new Outline(half)
            : null;
    }

    private IEnumerable<EulerSegment> Segments(double[] kappa)
    {
        CurvePoint at = new(Point.Origin, 0.5 * Math.PI, kappa[0]);
        for (int j = 0; j < lengths.Length; j++)
        {
            EulerSegment segment = new(
                at.Position,
                at.Angle,
                kappa[j],
                (kappa[j + 1] - kappa[j]) / lengths[j],
                lengths[j]
            );
            yield return segment;
            at = segment.End;
        }
    }

    /// <summary>How the end's angle and y change with each curvature.</summary>
    private (double[] Turn, double[] Rise) Slopes(Chain half)
    {
        double[] turn = new double[curvatures.Length];
        double[] rise = new double[curvatures.Length];
        Point end = half.End.Position;
        for (int j = 0; j < lengths.Length; j++)
        {
            // A bend dκ at s turns everything after it about its place: the end rises by its x distance times the turn.
            EulerSegment segment = half.Segments[j];
            const int steps = 8;
            double h = lengths[j] / steps;
            for (int i = 0; i <= steps; i++)
            {
                double weight =
                    h
                    / 3
                    * (
                        i is 0 or steps ? 1
                        : i % 2 == 1 ? 4
                        : 2
                    );
                double share = (double)i / steps;
                double arm = end.X - segment.PositionAt(i * h).X;
                turn[j] += weight * (1 - share);
                turn[j + 1] += weight * share;
                rise[j] += weight * (1 - share) * arm;
                rise[j + 1] += weight * share * arm;
            }
        }

        return (turn, rise);
    }
}

namespace Formwright.Curves;

/// <content>Area, joins, curvature pieces, radii.</content>
public sealed partial class Chain
{
    private (double Area, Point Centroid)? surface;

    /// <summary>Area to the left of the chain, mm²: positive when it runs counter-clockwise. An open chain is closed by its chord.</summary>
    /// <remarks>½∮(x dy - y dx) by 8-point Gauss-Legendre in panels that turn by at most 1 rad: exact to rounding.</remarks>
    public double SignedAreaMm2 => Surface.Area;

    /// <summary>Centroid of that area; not a number when the area is 0.</summary>
    public Point Centroid => Surface.Centroid;

    /// <summary>How the segments meet; for a closed chain the last join is the one at its start.</summary>
    public IReadOnlyList<ChainJoin> Joins
    {
        get
        {
            List<ChainJoin> joins = [];
            for (int i = 1; i < segments.Length + (IsClosed ? 1 : 0); i++)
            {
                EulerSegment before = segments[i - 1];
                EulerSegment after = segments[i % segments.Length];
                joins.Add(
                    new(
                        starts[i],
                        Math.IEEERemainder(after.StartAngle - before.EndAngle, 2 * Math.PI),
                        after.StartCurvature - before.EndCurvature
                    )
                );
            }

            return joins;
        }
    }

    /// <summary>The place of the largest curvature to the left; null when the chain never turns left.</summary>
    public ChainPoint? TightestLeft => Tightest(1);

    /// <summary>The place of the largest curvature to the right; null when the chain never turns right.</summary>
    public ChainPoint? TightestRight => Tightest(-1);

    private (double Area, Point Centroid) Surface => surface ??= MeasureSurface();

    /// <summary>Monotone runs of the curvature; rises and falls of less than a tolerance are taken into their neighbours.</summary>
    /// <param name="toleranceShare">
    /// Share of the whole range of curvature that a rise or fall must exceed to count, in [0, 1).
    /// </param>
    /// <remarks>
    /// The curvature is linear between joins, so its extremes are at joins. An open chain's pieces cover it from end to end; a closed
    /// chain's start at its largest curvature, and arc lengths run on past its end.
    /// </remarks>
    public IReadOnlyList<CurvaturePiece> CurvaturePieces(double toleranceShare = 0.01)
    {
        if (!(toleranceShare >= 0 && toleranceShare < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(toleranceShare));
        }

        return CurvatureRuns.Of(this, toleranceShare);
    }

    private ChainPoint? Tightest(int side)
    {
        double most = 0;
        ChainPoint? found = null;
        for (int i = 0; i < segments.Length; i++)
        {
            EulerSegment segment = segments[i];
            if (side * segment.StartCurvature > most)
            {
                most = side * segment.StartCurvature;
                found = new(starts[i], segment.At(0));
            }

            if (side * segment.EndCurvature > most)
            {
                most = side * segment.EndCurvature;
                found = new(starts[i + 1], segment.End);
            }
        }

        return found;
    }

    private (double Area, Point Centroid) MeasureSurface()
    {
        // About the start, so that an outline far from the origin loses no digits.
        Point origin = segments[0].Start;
        double area = 0;
        double momentX = 0;
        double momentY = 0;
        GaussLegendre rule = GaussLegendre.Eight;
        foreach (EulerSegment segment in segments)
        {
            double bend =
                segment.LengthMm
                * Math.Max(Math.Abs(segment.StartCurvature), Math.Abs(segment.EndCurvature));
            int panels = Math.Max(1, (int)Math.Ceiling(bend));
            double panel = segment.LengthMm / panels;
            for (int k = 0; k < panels; k++)
            {
                for (int q = 0; q < rule.Nodes.Length; q++)
                {
                    CurvePoint at = segment.At((k + rule.Nodes[q]) * panel);
                    Vector from = at.Position - origin;
                    Vector along = at.Tangent * (panel * rule.Weights[q]);
                    double sweep = from.Cross(along);
                    area += 0.5 * sweep;
                    momentX += from.X * sweep / 3;
                    momentY += from.Y * sweep / 3;
                }
            }
        }

        // The chord back to the start runs through the origin of these sums and sweeps nothing.
        return (area, origin + new Vector(momentX / area, momentY / area));
    }
}

using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>A B-spline of any degree, plain or rational (NURBS), over the whole range of its knots.</summary>
/// <remarks>Evaluated by de Boor's algorithm in homogeneous coordinates (de Boor, J. Approx. Theory 6, 1972).</remarks>
public sealed record SplinePiece : Piece
{
    private readonly Point[] controls;
    private readonly double[] weights;
    private readonly double[] knots;

    /// <param name="degree">1 or more, below the count of controls, at most 25.</param>
    /// <param name="controls">Control points, mm.</param>
    /// <param name="weights">One above 0 for each control.</param>
    /// <param name="knots">Not falling; as many as controls, plus degree, plus 1.</param>
    /// <exception cref="ArgumentException">The counts don't fit, the knots fall or span nothing.</exception>
    public SplinePiece(
        int degree,
        IReadOnlyList<Point> controls,
        IReadOnlyList<double> weights,
        IReadOnlyList<double> knots
    )
    {
        ArgumentNullException.ThrowIfNull(controls);
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentNullException.ThrowIfNull(knots);
        if (!AreConsistent(degree, controls.Count, weights, knots))
        {
            throw new ArgumentException("The parts of the spline don't fit together.");
        }

        Degree = degree;
        this.controls = [.. controls];
        this.weights = [.. weights];
        this.knots = [.. knots];
    }

    public int Degree { get; }

    public override bool IsFinite => controls.All(place => place.IsFinite);

    internal override bool IsWithin(double limit) =>
        Array.TrueForAll(controls, place => IsWithin(place, limit));

    internal override int FirstSteps => Math.Min(8 * (controls.Length - Degree), 4096);

    private double First => knots[Degree];

    private double Last => knots[controls.Length];

    /// <summary>Whether the counts fit, the knots don't fall and span something, and all weights are above 0.</summary>
    public static bool AreConsistent(
        int degree,
        int controls,
        IReadOnlyList<double> weights,
        IReadOnlyList<double> knots
    )
    {
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentNullException.ThrowIfNull(knots);
        if (
            degree is < 1 or > 25
            || controls <= degree
            || weights.Count != controls
            || knots.Count != controls + degree + 1
            || !weights.All(weight => double.IsFinite(weight) && weight > 0)
            || !knots.All(double.IsFinite)
        )
        {
            return false;
        }

        for (int i = 1; i < knots.Count; i++)
        {
            if (knots[i] < knots[i - 1])
            {
                return false;
            }
        }

        return knots[controls] > knots[degree];
    }

    public override Point At(double t)
    {
        double x = Math.Clamp(First + (t * (Last - First)), First, Last);
        int low = Degree;
        int high = controls.Length;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = knots[middle] <= x ? (middle, high) : (low, middle);
        }

        // At the end of the range the last span that is not empty is meant.
        while (low > Degree && knots[low + 1] == knots[low])
        {
            low--;
        }

        Span<double> px = stackalloc double[Degree + 1];
        Span<double> py = stackalloc double[Degree + 1];
        Span<double> pw = stackalloc double[Degree + 1];
        for (int j = 0; j <= Degree; j++)
        {
            int i = low - Degree + j;
            (px[j], py[j], pw[j]) = (
                controls[i].X * weights[i],
                controls[i].Y * weights[i],
                weights[i]
            );
        }

        for (int r = 1; r <= Degree; r++)
        {
            for (int j = Degree; j >= r; j--)
            {
                double from = knots[low - Degree + j];
                double width = knots[low + 1 + j - r] - from;
                double share = width > 0 ? (x - from) / width : 0;
                // Of both, so that weights of very different size can't cancel.
                double rest = 1 - share;
                px[j] = (rest * px[j - 1]) + (share * px[j]);
                py[j] = (rest * py[j - 1]) + (share * py[j]);
                pw[j] = (rest * pw[j - 1]) + (share * pw[j]);
            }
        }

        return new(px[Degree] / pw[Degree], py[Degree] / pw[Degree]);
    }

    public override Piece Under(Affine map) =>
        new SplinePiece(Degree, [.. controls.Select(map.Of)], weights, knots);

    public override Piece Reversed()
    {
        double sum = knots[0] + knots[^1];
        return new SplinePiece(
            Degree,
            [.. controls.Reverse()],
            [.. weights.Reverse()],
            [.. knots.Reverse().Select(knot => sum - knot)]
        );
    }
}

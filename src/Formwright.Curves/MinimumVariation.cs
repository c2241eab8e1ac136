using Formwright.Curves.Variation;

namespace Formwright.Curves;

/// <summary>The fair outline of given features: the curve of least ∫(dκ/ds)² ds (Moreton &amp; Séquin 1992).</summary>
public static class MinimumVariation
{
    /// <summary>Largest move of the half perimeter in the last refinement that is asked for unless said otherwise, mm.</summary>
    public const double UsualToleranceMm = 0.01;

    internal const int FewestSegments = 8;
    internal const int MostSegments = 128;
    private const int FewestBubbles = 6;
    private const int MostBubbles = 38;

    /// <summary>Finds the outline, or says which feature can't be met and why.</summary>
    /// <param name="features">What the maker asks for; impossible values come back as problems.</param>
    /// <param name="toleranceMm">The chain is refined until the half perimeter moves by less than this.</param>
    /// <exception cref="ArgumentException">The tolerance is not a number above 0.</exception>
    /// <remarks>
    /// Between two features the curvature plot is a polynomial of growing degree (<c>CurvatureBasis</c>), raised until the half perimeter
    /// settles. The start is one straight curvature plot per span, bent onto the features; fixed radii and flats are then brought in by
    /// degrees where they do not come at once. Of the several minima that such curves have, it is the one reached downhill from there; a
    /// curve with a loop is reported, never returned. The plot is then cut into Euler spirals of the same half perimeter, between 8 and
    /// 128 for each span, that stay within a tenth of the tolerance of it and meet all features exactly.
    /// </remarks>
    public static OutlineSolution Solve(
        OutlineFeatures features,
        double toleranceMm = UsualToleranceMm
    )
    {
        ArgumentNullException.ThrowIfNull(features);
        Guard.Positive(toleranceMm);
        IReadOnlyList<OutlineProblem> problems = OutlineChecks.Of(features);
        if (problems.Count > 0)
        {
            return Failed(problems, 0);
        }

        VariationStart start = new(features);
        if (start.Solve(FewestBubbles) is not { } curve)
        {
            return Failed([start.Problem], start.Iterations);
        }

        double moved = double.PositiveInfinity;
        while (!(moved < toleranceMm) && curve.Spans[0].Bubbles < MostBubbles)
        {
            double before = curve.Length;
            curve = curve.With(curve.Spans[0].Bubbles + 4);
            if (!curve.Settle())
            {
                return Failed([start.Failure(curve)], curve.Iterations);
            }

            moved = Math.Abs(curve.Length - before) * start.ScaleMm;
        }

        VariationOutline outline = VariationOutline.Of(
            curve,
            features,
            start.ScaleMm,
            0.1 * toleranceMm
        );
        problems = OutlineChecks.Of(features, outline);
        return problems.Count > 0
            ? Failed(start.BlameRadii(problems), curve.Iterations)
            : new(
                new Outline(outline.Half),
                [],
                OutlineChecks.HollowEnds(features, outline),
                curve.Energy / (start.ScaleMm * start.ScaleMm * start.ScaleMm),
                moved,
                outline.DeviationMm,
                curve.Iterations
            );
    }

    private static OutlineSolution Failed(IReadOnlyList<OutlineProblem> problems, int iterations) =>
        new(null, problems, [], double.NaN, double.NaN, double.NaN, iterations);
}

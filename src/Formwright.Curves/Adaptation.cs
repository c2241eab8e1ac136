using Formwright.Curves.Adapting;

namespace Formwright.Curves;

/// <summary>Bends an outline to other features while it keeps its character.</summary>
public static class Adaptation
{
    /// <summary>
    /// The outline that meets other features and whose relative curvature plot differs least from the given one's.
    /// </summary>
    /// <param name="source">An outline with two bouts and a waist.</param>
    /// <param name="features">
    /// What it shall meet: body length, stations, widths, and radii where given. Flats stay what they are in proportion.
    /// </param>
    /// <remarks>
    /// The plot's nodes are kept. Unknown are the logarithms of the pieces' lengths and the curvatures at the nodes, both relative to the
    /// source scaled to the new body length; the least sum of their squares, each weighed by its share of the length, is sought under the
    /// features as equations (Newton's method on the equations, the least change in each step). Nothing is changed when the features are
    /// the source's own, and a plain scaling only scales.
    /// </remarks>
    public static AdaptedOutline To(Outline source, OutlineFeatures features)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(features);
        IReadOnlyList<OutlineProblem> problems = Variation.OutlineChecks.Of(features);
        if (problems.Count > 0)
        {
            return new AdaptedOutline(null, problems, default);
        }

        if (AdaptedPlot.Start(source, features) is not { } plot)
        {
            return Failed(OutlineFeature.Waist, OutlineFault.NoTurn);
        }

        if (!plot.Solve())
        {
            return Failed(plot.Worst, OutlineFault.NotFound);
        }

        if (plot.ToOutline() is not { } outline)
        {
            return Failed(OutlineFeature.Tail, OutlineFault.NotFound);
        }

        if (outline.Half.TangentsAlong(0).Count != source.Half.TangentsAlong(0).Count)
        {
            return Failed(OutlineFeature.Waist, OutlineFault.NoTurn);
        }

        if (
            outline
                .Half.CrossingsAtY(0)
                .Any(place =>
                    place.ArcLengthMm > 1e-3 && place.ArcLengthMm < outline.HalfPerimeterMm - 1e-3
                )
        )
        {
            return Failed(OutlineFeature.Tail, OutlineFault.CrossesCentreline);
        }

        return new AdaptedOutline(outline, [], PlotChange.Between(source, outline));
    }

    private static AdaptedOutline Failed(OutlineFeature feature, OutlineFault fault) =>
        new(null, [new OutlineProblem(feature, fault, double.NaN, double.NaN)], default);
}

using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Body;

/// <summary>The outline of a design.</summary>
public static class BodyOutline
{
    /// <summary>The fair outline of the features that a design states, or what stands in its way.</summary>
    public static OutlineSolution Solve(OutlineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        OutlineFeatures features = new(
            design.BodyLengthMm,
            Station(design.UpperBout),
            Station(design.Waist),
            Station(design.LowerBout)
        )
        {
            HeelFlatMm = design.HeelFlatMm,
            TailFlatMm = design.TailFlatMm,
        };
        return design.Curve is { } curve
            ? Traced(curve, features)
            : MinimumVariation.Solve(features);
    }

    /// <summary>A traced curve, closed where rounding left it open, and bent to the features.</summary>
    private static OutlineSolution Traced(OutlineCurveDesign curve, OutlineFeatures features)
    {
        CurvaturePlot plot = new(
            curve.LengthsMm,
            [.. curve.BendsPerM.Select(bend => -bend / 1000)]
        );
        if (plot.Closed()?.ToOutline() is not { } outline)
        {
            return new OutlineSolution(
                null,
                [
                    new OutlineProblem(
                        OutlineFeature.Tail,
                        OutlineFault.NotFound,
                        double.NaN,
                        double.NaN
                    ),
                ],
                [],
                double.NaN,
                0,
                0,
                0
            );
        }

        AdaptedOutline adapted = Adaptation.To(outline, features);
        double energy =
            adapted.Outline?.Half.Segments.Sum(segment =>
                segment.CurvatureRate * segment.CurvatureRate * segment.LengthMm
            ) ?? double.NaN;
        return new OutlineSolution(adapted.Outline, adapted.Problems, [], energy, 0, 0, 0);
    }

    private static OutlineStation Station(BoutDesign bout) =>
        new(bout.AtMm, bout.WidthMm, bout.RadiusMm);
}

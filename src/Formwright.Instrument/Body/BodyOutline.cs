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
        return MinimumVariation.Solve(
            new OutlineFeatures(
                design.BodyLengthMm,
                Station(design.UpperBout),
                Station(design.Waist),
                Station(design.LowerBout)
            )
            {
                HeelFlatMm = design.HeelFlatMm,
                TailFlatMm = design.TailFlatMm,
            }
        );
    }

    private static OutlineStation Station(BoutDesign bout) =>
        new(bout.AtMm, bout.WidthMm, bout.RadiusMm);
}

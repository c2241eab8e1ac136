using System.Globalization;
using Formwright.Design;
using Formwright.Design.Sections;

namespace Formwright.Trace.Comparing;

/// <summary>
/// What a maker changes about an outline: a new body length, widths, or a factor; whatever is left out follows in proportion. The design's
/// outline then meets the new features and keeps its character (<see cref="Curves.Adaptation"/> for a traced one, the fairest curve for one
/// that has none).
/// </summary>
/// <param name="Factor">By what the whole outline is scaled first, such as the ratio of two scale lengths; 1 for not at all.</param>
/// <param name="BodyLengthMm">The body length, or null to let it follow.</param>
/// <param name="UpperBoutMm">Width of the upper bout, or null.</param>
/// <param name="WaistMm">Width of the waist, or null.</param>
/// <param name="LowerBoutMm">Width of the lower bout, or null.</param>
public sealed record OutlineChange(
    double Factor = 1,
    double? BodyLengthMm = null,
    double? UpperBoutMm = null,
    double? WaistMm = null,
    double? LowerBoutMm = null
)
{
    /// <summary>The outline with the change.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite or not above 0.</exception>
    public OutlineDesign Of(OutlineDesign outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        foreach (
            double? given in (double?[])[Factor, BodyLengthMm, UpperBoutMm, WaistMm, LowerBoutMm]
        )
        {
            if (given is { } value && !(double.IsFinite(value) && value > 0))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(outline),
                    value,
                    "A finite number above 0 is needed."
                );
            }
        }

        double length = BodyLengthMm ?? Factor * outline.BodyLengthMm;
        double along = length / outline.BodyLengthMm;
        BoutDesign Bout(BoutDesign bout, double? width) =>
            new(
                Rounded(along * bout.AtMm),
                Rounded(width ?? along * bout.WidthMm),
                bout.RadiusMm is { } radius ? Rounded(along * radius) : null
            );
        return outline with
        {
            BodyLengthMm = Rounded(length),
            HeelFlatMm = Rounded(along * outline.HeelFlatMm),
            TailFlatMm = Rounded(along * outline.TailFlatMm),
            UpperBout = Bout(outline.UpperBout, UpperBoutMm),
            Waist = Bout(outline.Waist, WaistMm),
            LowerBout = Bout(outline.LowerBout, LowerBoutMm),
        };
    }

    /// <summary>The text of a design with the change; comments and all else stay.</summary>
    public string Of(string text, OutlineDesign outline)
    {
        OutlineDesign changed = Of(outline);
        text = DesignEdit.Set(text, "outline.body_length", Number(changed.BodyLengthMm));
        foreach (
            (string key, double before, double after) in ((string, double, double)[])
                [
                    ("heel_flat", outline.HeelFlatMm, changed.HeelFlatMm),
                    ("tail_flat", outline.TailFlatMm, changed.TailFlatMm),
                ]
        )
        {
            if (before != after)
            {
                text = DesignEdit.Set(text, $"outline.{key}", Number(after));
            }
        }

        foreach (
            (string key, BoutDesign bout) in ((string, BoutDesign)[])
                [
                    ("upper_bout", changed.UpperBout),
                    ("waist", changed.Waist),
                    ("lower_bout", changed.LowerBout),
                ]
        )
        {
            text = DesignEdit.Set(text, $"outline.{key}.at", Number(bout.AtMm));
            text = DesignEdit.Set(text, $"outline.{key}.width", Number(bout.WidthMm));
            if (bout.RadiusMm is { } radius)
            {
                text = DesignEdit.Set(text, $"outline.{key}.radius", Number(radius));
            }
        }

        return text;
    }

    // A hundredth of a mm is finer than a template.
    private static double Rounded(double mm) => Math.Round(mm, 2);

    private static string Number(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture);
}

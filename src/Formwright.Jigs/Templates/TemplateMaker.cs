using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Templates;

/// <summary>Makes the outline templates: half, full, and mating (the negative that shows where a half leaves the line).</summary>
public static class TemplateMaker
{
    private const double ToleranceMm = 0.01;

    /// <summary>The three templates, in the workboard frame.</summary>
    public static IReadOnlyList<Part> Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        TemplatesDesign design = guitar.Design.Templates;
        OutlineOffsets offsets = new(guitar.Outline, guitar.JoinMm, ToleranceMm);
        ArcPath line = offsets.From(0, 0)!;
        ArcPath? inner = offsets.From(0, -design.WidthMm);
        ArcPath? outer = offsets.From(0, design.WidthMm);
        List<Part> parts = [];
        if (inner is not null)
        {
            ArcPath half = new ContourBuilder().Along(line).Back(inner).Close();
            ArcPath outside = new ContourBuilder()
                .Along(line)
                .Back(ArcPaths.Mirrored(line))
                .Close();
            ArcPath inside = new ContourBuilder()
                .Along(inner)
                .Back(ArcPaths.Mirrored(inner))
                .Close();
            parts.Add(Make("template-half", design, half, [], guitar, 1));
            parts.Add(Make("template-full", design, outside, [inside], guitar, -1));
        }

        if (outer is not null)
        {
            ArcPath mating = new ContourBuilder().Along(line).Back(outer).Close();
            parts.Add(Make("template-mating", design, mating, [], guitar, 1));
        }

        return parts;
    }

    private static Part Make(
        string id,
        TemplatesDesign design,
        ArcPath edge,
        ArcPath[] insides,
        Guitar guitar,
        int otherSide
    ) =>
        new(
            id,
            "material.template",
            design.ThicknessMm,
            1,
            edge,
            insides,
            [],
            [],
            [
                .. Stations(
                    guitar,
                    id == "template-mating" ? design.WidthMm : -design.WidthMm,
                    otherSide
                ),
            ]
        );

    // Short lines across the band at bouts and waist, on both sides where the template has both.
    private static IEnumerable<Mark> Stations(Guitar guitar, double across, int otherSide)
    {
        OutlineDesign outline = guitar.Design.Outline;
        foreach (
            (string key, BoutDesign bout) in new[]
            {
                ("mark.upper-bout", outline.UpperBout),
                ("mark.waist", outline.Waist),
                ("mark.lower-bout", outline.LowerBout),
            }
        )
        {
            double x = guitar.JoinMm + bout.AtMm;
            double y = bout.WidthMm / 2;
            double end = y + (across * 0.25);
            yield return new Mark(key, new Point(x, y), new Point(x, end), bout.WidthMm);
            if (otherSide < 0)
            {
                yield return new Mark(key, new Point(x, -y), new Point(x, -end), bout.WidthMm);
            }
        }
    }
}

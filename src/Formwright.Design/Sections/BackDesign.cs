using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[back]</c>: depth of the box, arch of the back, its bars.</summary>
/// <param name="Kind">How it is arched.</param>
/// <param name="DepthHeelMm">Depth at the heel on the centreline, inside to inside, mm.</param>
/// <param name="DepthTailMm">Depth at the tail, mm.</param>
/// <param name="LongRadiusMm">Radius of the arch along the centreline, mm; 0 for straight.</param>
/// <param name="CrossRadiusMm">Radius of the arch across, mm; 0 for flat. A sphere takes <paramref name="LongRadiusMm"/> both ways.</param>
/// <param name="ThicknessMm">Thickness of the back, mm.</param>
/// <param name="Bars">Its bars; where the file gives none, three: at the upper bout, the waist and the lower bout.</param>
/// <param name="StripWidthMm">Width of the strip over the middle joint, inside, mm; 0 for none.</param>
/// <param name="StripThicknessMm">Its thickness, mm.</param>
public sealed record BackDesign(
    BackKind Kind,
    double DepthHeelMm,
    double DepthTailMm,
    double LongRadiusMm,
    double CrossRadiusMm,
    double ThicknessMm,
    IReadOnlyList<BackBarDesign> Bars,
    double StripWidthMm,
    double StripThicknessMm
)
{
    internal static BackDesign Read(TableReader table, OutlineDesign outline)
    {
        BackKind kind = table.Choice("kind", BackKind.Arches);
        double along = table.Length("long_radius", 7500, 0, 100_000);
        double across = table.Length("cross_radius", 4000, 0, 100_000);
        CheckArch(table, "long_radius", along, outline.BodyLengthMm, kind == BackKind.Sphere);
        CheckArch(table, "cross_radius", across, outline.LowerBout.WidthMm, false);
        BackBarDesign[] bars = [.. table.Tables("bars").Select(BackBarDesign.Read)];
        return new(
            kind,
            table.Length("depth_heel", 92, 20, 300),
            table.Length("depth_tail", 98, 20, 300),
            along,
            across,
            table.Length("thickness", 2.6, 0.5, 10),
            table.Has("bars") ? bars : Usual(outline),
            table.Length("strip_width", 16, 0, 60),
            table.Length("strip_thickness", 2.5, 0, 10)
        );
    }

    // An arch must reach from end to end with room to spare: its radius is at least the chord.
    private static void CheckArch(
        TableReader table,
        string key,
        double radius,
        double chord,
        bool needed
    )
    {
        if ((radius > 0 || needed) && radius < chord)
        {
            table.Fault(key, DesignWords.Of.Format("diagnostic.back-arch", key, radius, chord));
        }
    }

    private static BackBarDesign[] Usual(OutlineDesign outline) =>
        [
            .. new[] { outline.UpperBout.AtMm, outline.Waist.AtMm, outline.LowerBout.AtMm }
                .Where(double.IsFinite)
                .Select(at => new BackBarDesign(at, 7, 15)),
        ];
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[outline]</c>: the features that the fair curve must meet, in the body frame (u from the heel).</summary>
/// <param name="BodyLengthMm">Heel to tail along the centreline, mm.</param>
/// <param name="HeelFlatMm">Width of a flat across the centreline at the heel, mm; 0 for none.</param>
/// <param name="TailFlatMm">Width of a flat at the tail, mm; 0 for none.</param>
/// <param name="UpperBout">Widest place above the waist.</param>
/// <param name="Waist">Narrowest place.</param>
/// <param name="LowerBout">Widest place below the waist.</param>
/// <param name="Curve">The run of the curve between them, where it was traced; null for the fairest one.</param>
public sealed record OutlineDesign(
    double BodyLengthMm,
    double HeelFlatMm,
    double TailFlatMm,
    BoutDesign UpperBout,
    BoutDesign Waist,
    BoutDesign LowerBout,
    OutlineCurveDesign? Curve = null
)
{
    internal static OutlineDesign Read(TableReader table) =>
        new(
            table.Length("body_length", null, 100, 1500),
            table.Length("heel_flat", 0, 0, 400),
            table.Length("tail_flat", 0, 0, 400),
            BoutDesign.Read(table.Table("upper_bout")),
            BoutDesign.Read(table.Table("waist")),
            BoutDesign.Read(table.Table("lower_bout")),
            OutlineCurveDesign.Read(table.Table("curve"))
        );
}

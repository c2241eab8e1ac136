namespace Formwright.Trace;

/// <summary>Bouts, waist and ends, read off a fair outline.</summary>
/// <param name="BodyLengthMm">Heel to tail, mm.</param>
/// <param name="UpperBout">Widest place above the waist; null where the outline has none.</param>
/// <param name="Waist">Narrowest place between the bouts; null where the outline has none.</param>
/// <param name="LowerBout">Widest place.</param>
/// <param name="HeelFlatMm">Width of a straight piece across the heel, mm; 0 for none.</param>
/// <param name="TailFlatMm">Width of a straight piece across the tail, mm; 0 for none.</param>
/// <param name="HeelRadiusMm">Radius on the centreline at the heel, mm; infinite on a flat.</param>
/// <param name="TailRadiusMm">Radius on the centreline at the tail, mm; infinite on a flat.</param>
public sealed record TracedFeatures(
    double BodyLengthMm,
    TracedFeature? UpperBout,
    TracedFeature? Waist,
    TracedFeature? LowerBout,
    double HeelFlatMm,
    double TailFlatMm,
    double HeelRadiusMm,
    double TailRadiusMm
)
{
    /// <summary>Whether it has what a design needs: two bouts and a waist.</summary>
    public bool IsGuitar => UpperBout is not null && Waist is not null && LowerBout is not null;
}

namespace Formwright.Instrument.Body.Ribs;

/// <summary>One bend of a rib, from straight to straight.</summary>
/// <param name="FromMm">Where it starts, from the tail end, mm.</param>
/// <param name="ToMm">Where it ends, mm.</param>
/// <param name="IsWaist">It bends the other way: hollow from outside.</param>
/// <param name="TightestMm">Smallest radius at mid-thickness, mm.</param>
/// <param name="TightestAtMm">Where that is, from the tail end, mm.</param>
/// <param name="TurnDeg">Angle that it turns through, degrees.</param>
/// <param name="StrainPercent">Stretch of the outer fibre there, t/2R with R at mid-thickness, %.</param>
/// <param name="FormRadiusMm">Radius of the bending form's face there: the rib's face that bears on it, tightened by the spring-back, mm.</param>
/// <param name="ThicknessThatBendsMm">Thickness whose outer fibre just keeps to the species' limit, mm.</param>
public sealed record RibBend(
    double FromMm,
    double ToMm,
    bool IsWaist,
    double TightestMm,
    double TightestAtMm,
    double TurnDeg,
    double StrainPercent,
    double FormRadiusMm,
    double ThicknessThatBendsMm
);

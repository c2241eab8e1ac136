namespace Formwright.Instrument.Wood;

/// <summary>A bar with its share of plate, in dry air, in the shop and in damp air.</summary>
/// <param name="Name">Its name on the drawing.</param>
/// <param name="Arch">Plate and bar.</param>
/// <param name="Dry">In the driest air.</param>
/// <param name="Glued">As glued.</param>
/// <param name="Wet">In the dampest air.</param>
/// <param name="DampestGluePercent">Dampest shop in which the plate may be glued so that half of its arch is left in the driest air, %.</param>
public sealed record BarArch(
    string Name,
    ArchedPlate Arch,
    ArchState Dry,
    ArchState Glued,
    ArchState Wet,
    double DampestGluePercent
);

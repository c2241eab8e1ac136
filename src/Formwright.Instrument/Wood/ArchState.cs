namespace Formwright.Instrument.Wood;

/// <summary>A barred, arched plate at rest in some air.</summary>
/// <param name="HumidityPercent">Relative humidity, %.</param>
/// <param name="MoisturePercent">Moisture content of its wood, %.</param>
/// <param name="RadiusMm">Radius of the arch, mm; infinite when flat, negative when hollow.</param>
/// <param name="RiseMm">Rise over the span: the sagitta of the arch, mm, negative when hollow.</param>
/// <param name="PlatePullMPa">Largest pull across the plate's grain, MPa; negative when it is pressed throughout.</param>
public readonly record struct ArchState(
    double HumidityPercent,
    double MoisturePercent,
    double RadiusMm,
    double RiseMm,
    double PlatePullMPa
);

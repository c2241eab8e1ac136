namespace Formwright.Instrument.Wood;

/// <summary>One layer of a glued strip.</summary>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="ModulusMPa">Modulus along the strip, MPa.</param>
/// <param name="FreeStrain">Strain along the strip that it would take if it were free (swelling positive).</param>
public readonly record struct Layer(
    double WidthMm,
    double ThicknessMm,
    double ModulusMPa,
    double FreeStrain
);

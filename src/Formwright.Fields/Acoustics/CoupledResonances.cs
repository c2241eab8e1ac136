namespace Formwright.Fields.Acoustics;

/// <summary>The two lowest resonances of a box: air and soundboard moving with and against each other.</summary>
/// <param name="LowHz">f₋, mostly the air, Hz.</param>
/// <param name="HighHz">f₊, mostly the soundboard, Hz.</param>
public readonly record struct CoupledResonances(double LowHz, double HighHz);

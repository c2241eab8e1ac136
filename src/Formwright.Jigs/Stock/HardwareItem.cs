using Formwright.Design.Sections;

namespace Formwright.Jigs.Stock;

/// <summary>Something that is bought ready made.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="DiameterMm">Nominal diameter, mm.</param>
/// <param name="LengthMm">Length, mm; 0 where it has none.</param>
/// <param name="Count">How many.</param>
public sealed record HardwareItem(HardwareKind Kind, double DiameterMm, double LengthMm, int Count);

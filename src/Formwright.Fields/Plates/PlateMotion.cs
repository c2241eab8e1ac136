using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>How a spot of a plate moved, on average.</summary>
/// <param name="RiseMm">Out of the plate, mm.</param>
/// <param name="SlopeRad">Slopes (dz/dx, dz/dy), rad; a positive X means that the side of greater x rose more.</param>
/// <param name="ShiftMm">Within the plate, mm.</param>
public readonly record struct PlateMotion(double RiseMm, Vector SlopeRad, Vector ShiftMm);

using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Action;

/// <summary>What nut and saddle sheets need for one string.</summary>
/// <param name="Wire">The string.</param>
/// <param name="NutMm">Compensated place of the nut, towards the saddle, mm.</param>
/// <param name="SaddleMm">Compensated place of the saddle from the nut, mm.</param>
/// <param name="NutSlotMm">Bottom of the nut's slot over the fingerboard, f + cn, mm.</param>
/// <param name="NutTopMm">Top of the nut over the fingerboard at the string, half its diameter over the slot, mm.</param>
/// <param name="SaddleHeightMm">Saddle over the soundboard, strung, mm.</param>
/// <param name="SaddleOverSlotMm">Saddle over the bottom of its own slot in the bridge, mm.</param>
/// <param name="BreakAngleRad">Angle by which the string turns over the saddle, rad.</param>
public sealed record StringRow(
    InstrumentString Wire,
    double NutMm,
    double SaddleMm,
    double NutSlotMm,
    double NutTopMm,
    double SaddleHeightMm,
    double SaddleOverSlotMm,
    double BreakAngleRad
);

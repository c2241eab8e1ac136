using Formwright.Design.Sections;

namespace Formwright.Instrument.Strings;

/// <summary>One string on the instrument, at pitch.</summary>
/// <param name="Number">Number that players use: 1 is the treble-most.</param>
/// <param name="Note">Its note.</param>
/// <param name="FrequencyHz">Open frequency, Hz.</param>
/// <param name="UnitMassKgPerM">Mass of a metre, kg/m.</param>
/// <param name="DiameterMm">Diameter over all, mm.</param>
/// <param name="ModulusMPa">Modulus of what carries the tension, MPa.</param>
/// <param name="StretchStiffnessN">EA: force per unit strain, N.</param>
/// <param name="BendingStiffnessNmm2">EI, N·mm².</param>
/// <param name="TensionN">Tension at pitch over the scale, N.</param>
/// <param name="Inharmonicity">B of the open string.</param>
/// <param name="NutYMm">Place across at the nut (y towards the treble side of the frame), mm.</param>
/// <param name="SaddleYMm">Place across at the saddle, mm.</param>
public sealed record InstrumentString(
    int Number,
    NoteName Note,
    double FrequencyHz,
    double UnitMassKgPerM,
    double DiameterMm,
    double ModulusMPa,
    double StretchStiffnessN,
    double BendingStiffnessNmm2,
    double TensionN,
    double Inharmonicity,
    double NutYMm,
    double SaddleYMm
)
{
    /// <summary>Tension at another scale or pitch, N.</summary>
    public double TensionAt(double scaleMm, double frequencyHz) =>
        VibratingString.TensionN(UnitMassKgPerM, scaleMm, frequencyHz);

    /// <summary>Place across at a share of the scale (0 at the nut, 1 at the saddle), mm.</summary>
    public double YAt(double share) => NutYMm + ((SaddleYMm - NutYMm) * share);
}

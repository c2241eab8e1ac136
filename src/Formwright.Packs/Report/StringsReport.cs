using System.ComponentModel;
using Formwright.Instrument.Action;

namespace Formwright.Packs.Report;

/// <summary>The strings' figures.</summary>
public sealed record StringsReport(
    [property: Description("Pull of all strings at pitch, N.")] double TotalTensionN,
    [property: Description("Couple on the bridge about the middle of the soundboard, N·mm.")]
        double BridgeCoupleNmm,
    [property: Description("Each string, bass to treble.")] IReadOnlyList<StringReport> Each
)
{
    internal static StringsReport Of(NeckAndAction action) =>
        new(
            action.Strings.TotalTensionN,
            action.Bridge.CoupleNmm,
            [
                .. action.StringRows.Select(row => new StringReport(
                    row.Wire.Number,
                    row.Wire.FrequencyHz,
                    row.Wire.TensionN,
                    row.Wire.DiameterMm,
                    row.Wire.UnitMassKgPerM * 1000,
                    row.NutMm,
                    row.SaddleMm
                )),
            ]
        );
}

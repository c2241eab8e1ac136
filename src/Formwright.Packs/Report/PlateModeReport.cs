using System.ComponentModel;
using Formwright.Fields.Plates;

namespace Formwright.Packs.Report;

/// <summary>A mode of the soundboard.</summary>
public sealed record PlateModeReport(
    [property: Description("Frequency without air and strings, Hz.")] double FrequencyHz,
    [property: Description("Modal mass for a shape that is 1 where it moves most, g.")]
        double MassG,
    [property: Description(
        "Area of a piston that moves as much air as the shape does, cm²; 0 for a mode that moves as much up as down."
    )]
        double SweptCm2
)
{
    internal static PlateModeReport Of(PlateMode mode) =>
        new(mode.FrequencyHz, 1000 * mode.MassKg, Math.Abs(mode.SweptMm2) / 100);
}

using Formwright.Fields.Acoustics;
using Formwright.Fields.Plates;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;

namespace Formwright.Instrument.Plates;

/// <summary>Where the soundboard rings, alone and with the air of the box.</summary>
/// <param name="Rim">How the rim is held for <paramref name="Modes"/>: hinged unless the design says clamped.</param>
/// <param name="Modes">The lowest modes.</param>
/// <param name="Converged">The modes were found to their tolerance and none was missed.</param>
/// <param name="VolumeL">Air in the box, L.</param>
/// <param name="AirHz">The air through the soundhole under a rigid soundboard, Hz.</param>
/// <param name="Hinged">The first mode with the air, rim hinged.</param>
/// <param name="Clamped">The first mode with the air, rim clamped.</param>
public sealed record PlateTones(
    RimSupport Rim,
    IReadOnlyList<PlateMode> Modes,
    bool Converged,
    double VolumeL,
    double AirHz,
    BoxTone Hinged,
    BoxTone Clamped
)
{
    internal static PlateTones? Of(Guitar guitar, PlateRinging? ringing)
    {
        if (ringing is null)
        {
            return null;
        }

        BackPlan back = BackPlan.Of(guitar.Design, guitar.Outline, guitar.Dome.Field);
        double litres = BoxVolume.Litres(
            guitar.Outline,
            back.Depth,
            guitar.Dome.Field,
            guitar.Design.Ribs.ThicknessMm
        );
        double air = AirResonance.HelmholtzHz(
            guitar.Design.Soundhole.RadiusMm,
            guitar.Design.Soundboard.ThicknessMm,
            litres
        );
        return new PlateTones(
            ringing.Rim,
            ringing.Shown.Modes,
            ringing.Shown is { Converged: true, Missed: 0 }
                && ringing.Other is { Converged: true, Missed: 0 },
            litres,
            air,
            Tone(ringing.Hinged, litres, air),
            Tone(ringing.Clamped, litres, air)
        );
    }

    private static BoxTone Tone(PlateModes modes, double litres, double air)
    {
        PlateMode main = modes
            .Modes.Take(PlateRinging.Looked)
            .MaxBy(mode => mode.SweptMm2 * mode.SweptMm2 / mode.MassKg)!;
        double closed = AirResonance.ClosedHz(main.FrequencyHz, main.MassKg, main.SweptMm2, litres);
        CoupledResonances both = AirResonance.Coupled(air, main.FrequencyHz, closed);
        return new BoxTone(main.FrequencyHz, closed, both.LowHz, both.HighHz);
    }
}

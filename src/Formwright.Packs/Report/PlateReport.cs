using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Instrument.Action;
using Formwright.Instrument.Plates;

namespace Formwright.Packs.Report;

/// <summary>The soundboard as a plate.</summary>
public sealed record PlateReport(
    [property: Description(
        "Whether the strung heights take the bridge's rise and rotation from the plate; else the design states them."
    )]
        bool FeedsTheAction,
    [property: Description("Rise of the bridge's middle under the strings, mm.")]
        double BridgeRiseMm,
    [property: Description("Its standard uncertainty, mm.")] double BridgeRiseUncertaintyMm,
    [property: Description("Rotation of the bridge, its top towards the nut, degrees.")]
        double BridgeRotationDeg,
    [property: Description("Its standard uncertainty, degrees.")]
        double BridgeRotationUncertaintyDeg,
    [property: Description("The rotation with the rim hinged, degrees.")] double HingedRotationDeg,
    [property: Description("The rotation with the rim clamped, degrees.")]
        double ClampedRotationDeg,
    [property: Description("Mass of soundboard, braces and bridge inside the linings, g.")]
        double MassG,
    [property: Description("Unknowns of the computation.")] int Unknowns,
    [property: Description("How the rim is held for the modes: hinged or clamped.")]
        string ModesRim,
    [property: Description("The lowest modes, without air and strings.")]
        IReadOnlyList<PlateModeReport> Modes,
    [property: Description("Whether all of them were found to the tolerance and none was missed.")]
        bool ModesConverged,
    [property: Description("Air of the box, litres.")] double VolumeL,
    [property: Description("The air through the soundhole under a rigid soundboard, Hz.")]
        double AirHz,
    [property: Description("The lower peak of the box, rim hinged, Hz.")] double LowHingedHz,
    [property: Description("The same, rim clamped, Hz.")] double LowClampedHz,
    [property: Description("The higher peak of the box, rim hinged, Hz.")] double HighHingedHz,
    [property: Description("The same, rim clamped, Hz.")] double HighClampedHz
)
{
    internal static PlateReport? Of(SoundboardPlate plate, NeckAndAction action)
    {
        if (
            plate.Under(action.Bridge.PullN, action.Bridge.CoupleNmm) is not { } motion
            || plate is not { Answers: { } answers, Tones: { } tones }
        )
        {
            return null;
        }

        motion = action.BridgeMotion ?? motion;
        return new PlateReport(
            action.BridgeMotion is not null,
            motion.RiseMm,
            motion.RiseUncertaintyMm,
            motion.RotationDeg,
            motion.RotationUncertaintyDeg,
            motion.HingedRotationDeg,
            motion.ClampedRotationDeg,
            1000 * answers.HingedModel.MassKg,
            answers.HingedModel.UnknownCount,
            Choices.NameOf(tones.Rim),
            [.. tones.Modes.Select(PlateModeReport.Of)],
            tones.Converged,
            tones.VolumeL,
            tones.AirHz,
            tones.Hinged.LowHz,
            tones.Clamped.LowHz,
            tones.Hinged.HighHz,
            tones.Clamped.HighHz
        );
    }
}

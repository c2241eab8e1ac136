using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Instrument.Plates;

/// <summary>Rules about what the plate says.</summary>
public static class PlateRules
{
    public static readonly Rule BridgeTurns = Of("plate.bridge-turns", Severity.Warn, "°");
    public static readonly Rule NotComputed = Of("plate.not-computed", Severity.Warn, "°");
    public static readonly Rule EdgeThicker = Of("plate.edge-thicker", Severity.Note, "mm");

    // A bridge that turns more than this distorts the soundboard for good (common practice).
    private const double MostTurnDeg = 2;

    /// <summary>What breaks a rule.</summary>
    /// <param name="plate">The soundboard.</param>
    /// <param name="action">Neck and action that took its answer.</param>
    public static IEnumerable<Finding> Check(SoundboardPlate plate, NeckAndAction action)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(action);
        InstrumentDesign design = plate.Guitar.Design;
        Place bridge = new(design.Identity.JoinMm + SoundboardPlan.BridgeMiddle(design).X, 0);
        if (action.BridgeMotion is { } motion && motion.RotationDeg > MostTurnDeg)
        {
            yield return BridgeTurns.Broken(
                motion.RotationDeg,
                MostTurnDeg,
                "bracing.height",
                bridge,
                motion.RotationUncertaintyDeg
            );
        }

        if (design.Load.Bridge == BridgeSource.Plate && action.BridgeMotion is null)
        {
            yield return NotComputed.Broken(
                design.Load.BridgeRotationDeg,
                0,
                "load.bridge",
                bridge,
                design.Load.BridgeRiseMm
            );
        }

        if (design.Soundboard.EdgeThicknessMm > design.Soundboard.ThicknessMm)
        {
            yield return EdgeThicker.Broken(
                design.Soundboard.EdgeThicknessMm,
                design.Soundboard.ThicknessMm,
                "soundboard.edge_thickness"
            );
        }
    }

    private static Rule Of(string code, Severity severity, string unit) =>
        new(code, severity, unit, InstrumentWords.Of);
}

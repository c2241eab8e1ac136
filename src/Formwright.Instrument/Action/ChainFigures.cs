namespace Formwright.Instrument.Action;

/// <summary>
/// Every figure of the height chain that a maker sets, measures or is unsure of; the places of frets and strings stand in <see cref="ChainGeometry"/>.
/// Domes are heights of the soundboard under the saddle, on the centreline, over the datum.
/// </summary>
public sealed record ChainFigures
{
    /// <summary>Ramp g: the neck's face at the nut over the datum, on the board, mm.</summary>
    public required double RampMm { get; init; }

    /// <summary>How far the nut moves forward when the neck leaves the board, mm.</summary>
    public required double OffBoardMm { get; init; }

    /// <summary>How far the nut moves forward after the fingerboard is glued, mm.</summary>
    public required double AfterGlueingMm { get; init; }

    /// <summary>Fingerboard at the nut, mean of its edges, mm.</summary>
    public required double FingerboardNutMm { get; init; }

    /// <summary>Fingerboard at the join, mean of its edges, mm.</summary>
    public required double FingerboardJoinMm { get; init; }

    /// <summary>Treble edge less bass edge at the nut, mm.</summary>
    public required double NutTiltMm { get; init; }

    /// <summary>Treble edge less bass edge at the join, mm.</summary>
    public required double JoinTiltMm { get; init; }

    /// <summary>Hollow planed in between nut and join, at its deepest, mm.</summary>
    public required double BowPlanedMm { get; init; }

    /// <summary>Fret height f, mm.</summary>
    public required double FretHeightMm { get; init; }

    /// <summary>Lowest string over the fret plane at the nut, mm.</summary>
    public required double NutBassMm { get; init; }

    /// <summary>Highest string over the fret plane at the nut, mm.</summary>
    public required double NutTrebleMm { get; init; }

    /// <summary>Dome on the board, mm.</summary>
    public required double DomeBoardMm { get; init; }

    /// <summary>Dome off the board, mm.</summary>
    public required double DomeFreeMm { get; init; }

    /// <summary>Dome under the strings if it is known by itself, mm; null: the free dome and <see cref="BridgeRiseMm"/>.</summary>
    public required double? DomeStrungMm { get; init; }

    /// <summary>Rise of the soundboard under the bridge, mm.</summary>
    public required double BridgeRiseMm { get; init; }

    /// <summary>Rotation of the bridge, top towards the nut, rad; it lowers a saddle that stands ahead of the bridge's middle.</summary>
    public required double BridgeRotationRad { get; init; }

    /// <summary>Rotation of the body at the join, nut forward, rad.</summary>
    public required double JoinRotationRad { get; init; }

    /// <summary>Share by which the neck's rise grows until it has settled.</summary>
    public required double Creep { get; init; }

    /// <summary>Modulus of the neck's wood, MPa.</summary>
    public required double NeckModulusMPa { get; init; }

    /// <summary>Modulus of the fingerboard's wood, MPa.</summary>
    public required double FingerboardModulusMPa { get; init; }

    /// <summary>How much thicker the neck is than drawn, mm.</summary>
    public required double NeckThickerMm { get; init; }

    /// <summary>Tension over the nominal one.</summary>
    public required double TensionFactor { get; init; }

    /// <summary>Action wanted of the lowest string at fret 12, strung, mm.</summary>
    public required double ActionBassMm { get; init; }

    /// <summary>Action wanted of the highest string at fret 12, strung, mm.</summary>
    public required double ActionTrebleMm { get; init; }

    /// <summary>Saddle height under the lowest string where it is made and stays, mm; null where it follows from the action.</summary>
    public required double? SaddleBassMm { get; init; }

    /// <summary>Saddle height under the highest string where it is made and stays, mm.</summary>
    public required double? SaddleTrebleMm { get; init; }

    /// <summary>What a measured action showed over the computed one, at the saddle under the lowest string, mm.</summary>
    public double CorrectionBassMm { get; init; }

    /// <summary>The same under the highest string, mm.</summary>
    public double CorrectionTrebleMm { get; init; }

    /// <summary>The neck's face at the nut over the datum at a stage, without what the strings do, mm.</summary>
    public double NeckMm(BuildStage stage) =>
        stage == BuildStage.OnBoard ? RampMm : RampMm + OffBoardMm + AfterGlueingMm;

    /// <summary>The soundboard under the saddle on the centreline at a stage, mm.</summary>
    /// <param name="stage">When.</param>
    /// <param name="saddleAheadMm">How far the saddle stands ahead of the bridge's middle, mm.</param>
    public double DomeMm(BuildStage stage, double saddleAheadMm) =>
        stage switch
        {
            BuildStage.OnBoard => DomeBoardMm,
            BuildStage.Free => DomeFreeMm,
            _ => (DomeStrungMm ?? DomeFreeMm + BridgeRiseMm) - (BridgeRotationRad * saddleAheadMm),
        };
}

using Formwright.Design;
using Formwright.Findings;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Ribs;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Bridges;
using Formwright.Instrument.NeckBlanks;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body;

/// <summary>All parts of the body, the neck blank and the wood of an instrument.</summary>
/// <param name="Guitar">The instrument.</param>
/// <param name="Board">What was measured of the soundboard's wood.</param>
/// <param name="Soundboard">Soundboard with bars and braces.</param>
/// <param name="Back">Back with its bars.</param>
/// <param name="Ribs">Ribs, linings and blocks.</param>
/// <param name="Bridge">Bridge.</param>
/// <param name="BridgeCaul">Caul inside under the bridge.</param>
/// <param name="Nut">Nut.</param>
/// <param name="Neck">Neck blank.</param>
/// <param name="Wood">Movement, arches in dry and damp air, board stiffness and thickness.</param>
/// <param name="Findings">Rules that the body breaks or nearly breaks.</param>
public sealed record BodyPlan(
    Guitar Guitar,
    BoardMeasure Board,
    SoundboardPlan Soundboard,
    BackPlan Back,
    RibPlan Ribs,
    BridgePlan Bridge,
    Caul BridgeCaul,
    NutPlan Nut,
    NeckBlank Neck,
    WoodPlan Wood,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Computes the body of an instrument.</summary>
    /// <param name="guitar">The instrument with its outline and dome.</param>
    /// <param name="saddleMm">Where each string leaves the saddle, bass to treble, instrument frame, mm; null for the bare scale.</param>
    public static BodyPlan Of(Guitar guitar, IReadOnlyList<double>? saddleMm = null)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        InstrumentDesign design = guitar.Design;
        double[] bare = [.. design.Strings.Strings.Select(_ => design.Identity.ScaleMm)];
        BoardMeasure board = BoardMeasure.Of(design.Wood.Soundboard, design.BoardTest);
        BridgePlan bridge = BridgePlan.Of(design, guitar.Dome.Field, saddleMm ?? bare);
        SoundboardPlan soundboard = SoundboardPlan.Of(
            design,
            guitar.Outline,
            guitar.Dome.Field,
            board.Timber
        );
        BackPlan back = BackPlan.Of(design, guitar.Outline, guitar.Dome.Field);
        RibPlan ribs = RibMaker.Of(design, guitar.Outline, guitar.Dome.Field, back.Depth);
        NeckBlank neck = NeckBlank.Of(design, ribs.Points[^1].HeightMm);
        WoodPlan wood = WoodPlan.Of(design, guitar.Outline, back, soundboard, board);
        BodyPlan plan = new(
            guitar,
            board,
            soundboard,
            back,
            ribs,
            bridge,
            Bridges.BridgeCaul.Of(bridge, soundboard, guitar.Dome.Field),
            NutPlan.Of(design),
            neck,
            wood,
            []
        );
        return plan with { Findings = [.. BodyChecks.Of(plan), .. wood.Findings(design)] };
    }
}

using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields.Plates;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Instrument.Plates;

/// <summary>
/// The soundboard as a plate: how it answers the strings, and where it rings. Both are computed when they are first asked for, and kept.
/// </summary>
public sealed class SoundboardPlate
{
    // Common fineness makes the turn of the bridge up to this share too small (tested against four times the unknowns).
    private const double FinenessShare = 0.05;

    private readonly SoundboardPlan soundboard;
    private readonly BoardMeasure board;
    private readonly InstrumentDesign made;
    private readonly Lazy<PlateAnswers?> answers;
    private readonly Lazy<PlateRinging?> ringing;
    private readonly Lazy<PlateTones?> tones;

    private SoundboardPlate(Guitar guitar, SoundboardPlan soundboard, BoardMeasure board)
    {
        Guitar = guitar;
        this.soundboard = soundboard;
        this.board = board;
        made = guitar.Design;
        Thickness = new(made.Soundboard, guitar.Outline);
        answers = new(Answered);
        ringing = new(() => PlateRinging.Of(answers.Value, made.Plate.Rim));
        tones = new(() => PlateTones.Of(Guitar, ringing.Value));
    }

    private SoundboardPlate(Guitar guitar, SoundboardPlate earlier)
    {
        Guitar = guitar;
        soundboard = earlier.soundboard;
        board = earlier.board;
        made = earlier.made;
        Thickness = earlier.Thickness;
        answers = earlier.answers;
        ringing = earlier.ringing;
        tones = new(() => PlateTones.Of(Guitar, ringing.Value));
    }

    /// <summary>The instrument that it belongs to.</summary>
    public Guitar Guitar { get; }

    /// <summary>Its thickness.</summary>
    public ThicknessMap Thickness { get; }

    /// <summary>The plate's answers to unit loads, null where it can't be computed: a hole or a bridge that is not on the board, braces of no size.</summary>
    public PlateAnswers? Answers => answers.Value;

    /// <summary>Where it rings, with and without the air of the box; null where it can't be computed.</summary>
    public PlateTones? Tones => tones.Value;

    /// <summary>The plate of an instrument.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="earlier">A plate computed before; its answers are taken where nothing that they depend on has changed.</param>
    /// <param name="isPassing">Something is being dragged: its answers are taken whatever has changed, until it comes to rest.</param>
    public static SoundboardPlate Of(
        Guitar guitar,
        SoundboardPlate? earlier = null,
        bool isPassing = false
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        if (earlier is not null && (isPassing || PlateInputs.AreSame(earlier.made, guitar.Design)))
        {
            return new(guitar, earlier);
        }

        InstrumentDesign design = guitar.Design;
        BoardMeasure board = BoardMeasure.Of(design.Wood.Soundboard, design.BoardTest);
        return new(
            guitar,
            SoundboardPlan.Of(design, guitar.Outline, guitar.Dome.Field, board.Timber),
            board
        );
    }

    /// <summary>How the bridge moves under the strings; null where the plate can't be computed.</summary>
    /// <param name="pullN">Sum of the tensions ΣT, N.</param>
    /// <param name="coupleNmm">Their couple ΣT (s + t/2) about the middle of the soundboard, N·mm.</param>
    public BridgeMotion? Under(double pullN, double coupleNmm)
    {
        if (Answers is not { } known)
        {
            return null;
        }

        (double hingedRise, double hingedTurn) = Sum(known.Hinged, pullN, coupleNmm);
        (double clampedRise, double clampedTurn) = Sum(known.Clamped, pullN, coupleNmm);
        PlateRim rim = Guitar.Design.Plate.Rim;
        double share = rim switch
        {
            PlateRim.Hinged => 0,
            PlateRim.Clamped => 1,
            _ => 0.5,
        };
        double rise = hingedRise + (share * (clampedRise - hingedRise));
        double turn = hingedTurn + (share * (clampedTurn - hingedTurn));
        // Half the way between both rims, rectangular, whichever of them is chosen; wood and fineness scale the answer.
        double relative = Math.Sqrt((WoodShare * WoodShare) + (FinenessShare * FinenessShare / 3));
        return new BridgeMotion(
            rise,
            turn,
            Norm((hingedRise - clampedRise) / (2 * Math.Sqrt(3)), relative * rise),
            Norm((hingedTurn - clampedTurn) / (2 * Math.Sqrt(3)), relative * turn),
            pullN,
            coupleNmm,
            hingedTurn,
            clampedTurn
        );
    }

    /// <summary>The board's shape under the strings, rim clamped where the design says so, else hinged; null where it can't be computed.</summary>
    /// <inheritdoc cref="Under"/>
    public PlateShape? ShapeUnder(double pullN, double coupleNmm)
    {
        if (Answers is not { } known)
        {
            return null;
        }

        PlateModel model =
            Guitar.Design.Plate.Rim == PlateRim.Clamped ? known.ClampedModel : known.HingedModel;
        lock (model)
        {
            return model.Deflect(
                new PlateLoad(known.Bridge, 0, new Vector(coupleNmm, 0), new Vector(-pullN, 0))
            );
        }
    }

    /// <summary>
    /// Relative standard uncertainty of the stiffness. All moduli together scale the answer by their inverse; half of it is put down to the
    /// board, half to the braces (our choice).
    /// </summary>
    public double WoodShare
    {
        get
        {
            double unknown = Guitar.Design.Plate.WoodPercent / 100 / Math.Sqrt(3);
            double wood = board.Timber.LongMeasured
                ? board.LongUncertaintyShare ?? MeasuredShare
                : unknown;
            double braces = Guitar.Design.Wood.Braces.ModulusLongGPa is null
                ? unknown
                : MeasuredShare;
            return Norm(wood / 2, braces / 2);
        }
    }

    // A modulus that the maker states is taken to be good to 5 % (our choice).
    private const double MeasuredShare = 0.05;

    private static (double RiseMm, double TurnRad) Sum(
        BridgeInfluence influence,
        double pullN,
        double coupleNmm
    ) =>
        (
            (coupleNmm * influence.PerCoupleNmm.RiseMm) + (pullN * influence.PerPullN.RiseMm),
            (coupleNmm * influence.PerCoupleNmm.SlopeRad.X)
                + (pullN * influence.PerPullN.SlopeRad.X)
        );

    private static double Norm(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private PlateAnswers? Answered()
    {
        InstrumentDesign design = made;
        try
        {
            Plate plate = PlateMaker.Of(Guitar, soundboard, board.Timber, Thickness);
            PlateSpot bridge = PlateMaker.BridgeSpot(design);
            PlateMesh mesh = PlateMesh.Of(plate, design.Plate.Unknowns);
            // Two plates on one mesh: neither needs the other, and they take most of the time of a study.
            Task<(PlateModel Model, BridgeInfluence Influence)> clamping = Task.Run(() =>
                Held(plate with { Support = EdgeSupport.Clamped }, mesh, bridge)
            );
            (PlateModel hinged, BridgeInfluence swings) = Held(plate, mesh, bridge);
            (PlateModel clamped, BridgeInfluence bends) = clamping.GetAwaiter().GetResult();
            return new PlateAnswers(bridge, hinged, clamped, swings, bends);
        }
        catch (ArgumentException)
        {
            // What a maker draws need not be a plate: a soundhole across the edge, a bridge beyond it. The rules of the body name it.
            return null;
        }
    }

    private static (PlateModel, BridgeInfluence) Held(Plate plate, PlateMesh mesh, PlateSpot bridge)
    {
        PlateModel model = PlateModel.On(plate, mesh);
        return (model, model.Influence(bridge));
    }
}

using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Plates;
using Formwright.Instrument.Strings;
using Formwright.Instrument.Tolerances;

namespace Formwright.Instrument.Action;

/// <summary>
/// Neck and action of a design: everything that report, sheets and page show of it, computed by one pure function.
/// </summary>
/// <param name="Model">The chain with what is measured; for sliders, ask it alone.</param>
/// <param name="Tolerances">How far each figure may still be off.</param>
/// <param name="OnBoard">Heights on the board.</param>
/// <param name="Free">Heights with the box off the board, unstrung.</param>
/// <param name="Strung">Heights strung.</param>
/// <param name="Needed">Strung heights with the saddle that the wanted action needs; the same as <paramref name="Strung"/> where no saddle is given.</param>
/// <param name="Measured">Measured beside computed.</param>
/// <param name="Intonation">Ways of setting nut and saddle, with the errors in cents.</param>
/// <param name="Compensation">The way that the design takes.</param>
/// <param name="Frets">The fret table.</param>
/// <param name="StringRows">Bass to treble.</param>
/// <param name="Bow">Bow and what to plane.</param>
/// <param name="Bridge">Load on the bridge.</param>
/// <param name="BridgeMotion">How the plate says that it moves the bridge; null where the design states it, or the plate can't be computed.</param>
/// <param name="ActionBass">Uncertainty of the action of the lowest string.</param>
/// <param name="ActionTreble">Uncertainty of the action of the highest string.</param>
/// <param name="SaddleBass">Uncertainty of the saddle that the lowest string needs.</param>
/// <param name="SaddleTreble">Uncertainty of the saddle that the highest string needs.</param>
/// <param name="Chance">Many builds; null where none were asked for.</param>
/// <param name="Chart">Ramp against dome.</param>
/// <param name="Solver">Solves for any one figure.</param>
/// <param name="StillOpen">For each figure that can still be changed, what it would have to become for the saddle that is wanted.</param>
/// <param name="Findings">What to see to.</param>
public sealed record NeckAndAction(
    ChainModel Model,
    ChainTolerances Tolerances,
    HeightChain OnBoard,
    HeightChain Free,
    HeightChain Strung,
    HeightChain Needed,
    IReadOnlyList<MeasuredRow> Measured,
    Intonation Intonation,
    IntonationPlan Compensation,
    IReadOnlyList<FretRow> Frets,
    IReadOnlyList<StringRow> StringRows,
    BowAdvice Bow,
    BridgeLoad Bridge,
    BridgeMotion? BridgeMotion,
    Budget ActionBass,
    Budget ActionTreble,
    Budget SaddleBass,
    Budget SaddleTreble,
    ChanceResult? Chance,
    RampDomeChart Chart,
    ActionSolver Solver,
    IReadOnlyList<SolveAnswer> StillOpen,
    IReadOnlyList<Finding> Findings
)
{
    // A dome that is flat under the saddle gives no share to scale by.
    private const double LeastDomeMm = 1e-9;

    private const int MostRounds = 20;
    private const double SettledMm = 1e-7;

    /// <summary>The strings at pitch.</summary>
    public StringSet Strings => Model.Geometry.Strings;

    /// <summary>
    /// Height of the soundboard on the centreline at a stage of the build, mm over the datum: its shape on the board, as high under the
    /// saddle as the chain has it. That the dome keeps its shape as it springs back or is strung is an assumption.
    /// </summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="chain">The stage.</param>
    /// <param name="xMm">Place from the nut, between join and tail, mm.</param>
    public double SoundboardMm(Guitar guitar, HeightChain chain, double xMm)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(chain);
        double board = OnBoard.DomeMm;
        double share = Math.Abs(board) > LeastDomeMm ? chain.DomeMm / board : 1;
        return share * guitar.Dome.Field.HeightAt(new Point(xMm - guitar.JoinMm, 0));
    }

    /// <summary>Computes neck and action of an instrument, with its own dome.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="builds">Builds of the Monte Carlo run; null for the design's number, 0 for none.</param>
    /// <param name="plate">Its soundboard as a plate, which tells how the bridge moves if the design asks for it; null: as the design states.</param>
    public static NeckAndAction Of(
        Guitar guitar,
        long? builds = null,
        SoundboardPlate? plate = null
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        return Of(
            guitar.Design,
            (x, y) => guitar.Dome.Field.HeightAt(new Point(x - guitar.JoinMm, y)),
            builds,
            plate
        );
    }

    /// <summary>Computes neck and action.</summary>
    /// <param name="design">A design that was read without diagnostics.</param>
    /// <param name="domeMm">Height of the soundboard over the datum on the board at (x from the nut, y towards the treble side), mm.</param>
    /// <param name="builds">Builds of the Monte Carlo run; null for the design's number, 0 for none.</param>
    /// <param name="plate">The soundboard as a plate, or null.</param>
    public static NeckAndAction Of(
        InstrumentDesign design,
        Func<double, double, double> domeMm,
        long? builds = null,
        SoundboardPlate? plate = null
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ActionSetup setup = ActionSetup.Of(design, domeMm);
        MeasuredSoFar bench = MeasuredSoFar.Of(setup, design);
        BridgeMotion? motion = MotionOf(design, bench.Model, plate);
        // The couple depends on the saddle, the saddle a little on the answer: each round leaves about a tenth of the change.
        for (int round = 0; motion is not null && round < MostRounds; round++)
        {
            setup = ActionSetup.Of(design, domeMm, motion);
            bench = MeasuredSoFar.Of(setup, design);
            BridgeMotion next = MotionOf(design, bench.Model, plate)!;
            double change = Math.Abs(next.RiseMm - motion.RiseMm);
            motion = next;
            if (change < SettledMm)
            {
                break;
            }
        }

        ChainModel model = bench.Model;
        HeightChain strung = model.At(BuildStage.Strung);
        HeightChain needed = model.Needed(BuildStage.Strung);
        ActionBatch batch = new(model, bench.Tolerances);
        IReadOnlyList<Budget> budgets = Propagation.Of(
            batch,
            [
                (int)ActionOutput.ActionBass,
                (int)ActionOutput.ActionTreble,
                (int)ActionOutput.SaddleBass,
                (int)ActionOutput.SaddleTreble,
            ]
        );
        (double, double) range = (design.Saddle.LeastMm, design.Saddle.MostMm);
        long count = builds ?? design.Tolerances.Builds;
        ChanceResult? chance =
            count > 0
                ? ChanceResult.Of(
                    batch,
                    model.Figures,
                    design.Action.BandMm,
                    range,
                    Math.Max(count, 1000),
                    (ulong)design.Tolerances.Seed,
                    Sensitivity(budgets[0], ChainInput.Saddle),
                    Sensitivity(budgets[2], ChainInput.Ramp)
                )
                : null;
        (double, double) box = (
            Half(bench.Tolerances, ChainInput.DomeFree),
            Half(bench.Tolerances, ChainInput.Ramp)
                + Half(bench.Tolerances, ChainInput.NeckOffBoard)
                + Half(bench.Tolerances, ChainInput.NeckAfterGlueing)
        );
        ActionSolver solver = new(model, design, setup.DomePerHeight);
        IntonationPlan plan = setup.Intonation.Of(design.Saddle.Compensation);
        IReadOnlyList<FretRow> frets = FretTable.Of(design, model, domeMm);
        NeckAndAction result = new(
            model,
            bench.Tolerances,
            model.At(BuildStage.OnBoard),
            model.At(BuildStage.Free),
            strung,
            needed,
            bench.Rows,
            setup.Intonation,
            plan,
            frets,
            RowsOf(design, model, plan, strung),
            new(
                strung.BowMm - model.Figures.BowPlanedMm,
                model.Figures.BowPlanedMm,
                strung.BowMm,
                design.Fingerboard.BowWantedMm
            ),
            LoadOf(design, model, strung),
            motion,
            budgets[0],
            budgets[1],
            budgets[2],
            budgets[3],
            chance,
            RampDomeChart.Of(model, box, range),
            solver,
            OpenOf(solver, design.Measured),
            []
        );
        return result with { Findings = [.. ActionRules.Of(design, result)] };
    }

    private static BridgeMotion? MotionOf(
        InstrumentDesign design,
        ChainModel model,
        SoundboardPlate? plate
    )
    {
        if (plate is null || design.Load.Bridge != BridgeSource.Plate)
        {
            return null;
        }

        BridgeLoad load = LoadOf(design, model, model.At(BuildStage.Strung));
        return plate.Under(load.PullN, load.CoupleNmm);
    }

    // What the bench has not settled yet, in the order of the build.
    private static List<SolveAnswer> OpenOf(ActionSolver solver, MeasuredDesign measured)
    {
        bool fretted = measured.FretHeightMm is not null;
        bool strung = measured.SaddleBassMm is not null || measured.NutRiseMm is not null;
        List<SolveAnswer> open = [];
        foreach (Unknown unknown in (Unknown[])[Unknown.Ramp, Unknown.Dome, Unknown.Fingerboard])
        {
            bool made = strung || (fretted && unknown == Unknown.Fingerboard);
            if (!made && !solver.IsMeasured(unknown))
            {
                open.Add(solver.For(unknown));
            }
        }

        open.Add(solver.For(Unknown.Saddle));
        open.Add(solver.For(Unknown.Action));
        return open;
    }

    private static StringRow[] RowsOf(
        InstrumentDesign design,
        ChainModel model,
        IntonationPlan plan,
        HeightChain strung
    )
    {
        StringRow[] rows = new StringRow[model.Geometry.Count];
        ChainFigures f = model.Figures;
        for (int i = 0; i < rows.Length; i++)
        {
            InstrumentString wire = model.Geometry.Strings.Strings[i];
            double cn = f.NutBassMm + ((f.NutTrebleMm - f.NutBassMm) * model.Geometry.ShareOf(i));
            double slot = f.FretHeightMm + cn;
            double saddle = strung.Strings[i].SaddleMm;
            rows[i] = new(
                wire,
                plan.Strings[i].NutMm,
                model.Geometry.SaddleMm[i],
                slot,
                slot + (0.5 * wire.DiameterMm),
                saddle,
                saddle - design.Saddle.SlotBottomMm,
                strung.Strings[i].BreakAngleRad
            );
        }

        return rows;
    }

    private static BridgeLoad LoadOf(InstrumentDesign design, ChainModel model, HeightChain strung)
    {
        double pull = 0;
        double couple = 0;
        double half = 0.5 * design.Soundboard.ThicknessMm;
        for (int i = 0; i < strung.Strings.Count; i++)
        {
            double tension =
                model.Figures.TensionFactor * model.Geometry.Strings.Strings[i].TensionN;
            pull += tension;
            couple += tension * (strung.Strings[i].SaddleMm + half);
        }

        return new(pull, couple);
    }

    private static double Sensitivity(Budget budget, ChainInput input) =>
        budget.Contributions[(int)input].Sensitivity;

    private static double Half(ChainTolerances tolerances, ChainInput input)
    {
        (InputShape shape, double spread) = tolerances[input];
        return new UncertainInput("", 0, shape, spread).HalfWidth;
    }
}

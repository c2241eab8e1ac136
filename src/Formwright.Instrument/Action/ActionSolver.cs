using Formwright.Design;

namespace Formwright.Instrument.Action;

/// <summary>
/// Solves the strung chain for any one of ramp, dome, saddle, fingerboard or action, the others given: the saddle that the wanted action needs is to
/// be the saddle that is wanted. On the board that is linear; strung it is nearly so, and a secant search from the design's own figures settles it.
/// </summary>
/// <param name="model">The chain, with whatever is measured.</param>
/// <param name="design">The design, for its keys, its limits and the saddle height it wants.</param>
/// <param name="domePerHeight">Dome under the saddle for one mm of <c>dome.height</c>.</param>
public sealed class ActionSolver(ChainModel model, InstrumentDesign design, double domePerHeight)
{
    private const int MaxSteps = 30;
    private const double SettledMm = 1e-10;
    private const double FirstStepMm = 0.1;
    private const double LeastSlope = 1e-6;
    private readonly SolveLimits limits = SolveLimits.Of(design);
    private readonly UnknownFigures unknowns = new(
        model,
        design,
        SolveLimits.Of(design),
        domePerHeight
    );

    /// <summary>The saddle heights that are held, bass and treble, mm: those given, or the height that the maker wants on both.</summary>
    private (double Bass, double Treble) Goal =>
        model.Figures is { SaddleBassMm: { } bass, SaddleTrebleMm: { } treble }
            ? (bass, treble)
            : (design.Saddle.HeightMm, design.Saddle.HeightMm);

    private double Middle => 0.5 * (Goal.Bass + Goal.Treble);

    /// <summary>Whether the bench has settled a figure, so that it can't be chosen any more.</summary>
    public bool IsMeasured(Unknown unknown) => unknowns.IsMeasured(unknown);

    /// <summary>Solves for a figure.</summary>
    public SolveAnswer For(Unknown unknown) =>
        unknown switch
        {
            Unknown.Saddle => Saddle(),
            Unknown.FingerboardSides => Sides(),
            Unknown.Action when model.Figures.SaddleBassMm is not null => ActionOfSaddle(),
            _ => One(unknown),
        };

    private SolveAnswer One(Unknown unknown)
    {
        if (unknown == Unknown.Dome && domePerHeight <= 0)
        {
            return new(
                unknown,
                [],
                false,
                Words("solve.no-dome"),
                Middle,
                model.At(BuildStage.OnBoard),
                model.At(BuildStage.Strung),
                true
            );
        }

        bool measured = IsMeasured(unknown);
        (double change, bool converged, bool moves) = Search(move =>
            unknowns.Moved(unknown, move).Needed(BuildStage.Strung).SaddleMm - Middle
        );
        (double least, double most) = unknowns.Room(unknown);
        if (least > most)
        {
            // The two ends of a fingerboard already lie outside on different sides.
            (least, most) = (0, 0);
        }

        double nearest = Math.Clamp(change, least, most);
        bool possible = converged && moves && nearest == change && !measured;
        ChainModel after = Held(unknowns.Moved(unknown, nearest), unknown);
        string reason =
            possible ? ""
            : measured ? InstrumentWords.Of.Format("solve.measured", NameOf(unknown))
            : Why(unknown, change, least, moves && converged, nearest);
        return new(
            unknown,
            unknowns.Keys(unknown, change, nearest),
            possible,
            reason,
            Middle,
            after.At(BuildStage.OnBoard),
            after.At(BuildStage.Strung),
            converged
        );
    }

    private SolveAnswer Saddle()
    {
        HeightChain needed = model.Needed(BuildStage.Strung);
        double bass = needed.Bass.SaddleMm;
        double treble = needed.Treble.SaddleMm;
        (double least, double most) = limits.SaddleMm;
        double nearBass = Math.Clamp(bass, least, most);
        double nearTreble = Math.Clamp(treble, least, most);
        bool possible = nearBass == bass && nearTreble == treble;
        ChainModel after = model with
        {
            Figures = model.Figures with { SaddleBassMm = nearBass, SaddleTrebleMm = nearTreble },
        };
        HeightChain strung = after.At(BuildStage.Strung);
        string reason = possible
            ? ""
            : InstrumentWords.Of.Format(
                "solve.saddle",
                bass,
                treble,
                least,
                most,
                strung.Bass.Action12Mm,
                strung.Treble.Action12Mm
            );
        return new(
            Unknown.Saddle,
            [
                new("saddle.height_bass", design.Saddle.HeightBassMm ?? double.NaN, bass, nearBass),
                new(
                    "saddle.height_treble",
                    design.Saddle.HeightTrebleMm ?? double.NaN,
                    treble,
                    nearTreble
                ),
            ],
            possible,
            reason,
            0.5 * (bass + treble),
            after.At(BuildStage.OnBoard),
            strung,
            needed.Converged
        );
    }

    // A saddle that is made gives each of the outermost strings its own action.
    private SolveAnswer ActionOfSaddle()
    {
        HeightChain strung = model.At(BuildStage.Strung);
        (double least, double most) = limits.ActionMm;
        SolvedFigure Of(string key, double before, double asked) =>
            new(key, before, asked, Math.Clamp(asked, least, most));
        SolvedFigure[] figures =
        [
            Of("action.bass", design.Action.BassMm, strung.Bass.Action12Mm),
            Of("action.treble", design.Action.TrebleMm, strung.Treble.Action12Mm),
        ];
        bool possible = figures.All(each => each.AfterMm == each.AskedMm);
        string reason = possible
            ? ""
            : Sentence(
                Unknown.Action,
                figures[0],
                figures.Any(each => each.AskedMm < least),
                strung.SaddleMm
            );
        return new(
            Unknown.Action,
            figures,
            possible,
            reason,
            Middle,
            model.At(BuildStage.OnBoard),
            strung,
            strung.Converged
        );
    }

    // Two edges, two outermost strings: Newton on both saddle heights at once.
    private SolveAnswer Sides()
    {
        double even = 0;
        double tilt = 0;
        bool converged = false;
        (double Bass, double Treble) Miss(double e, double t)
        {
            HeightChain needed = Tilted(e, t).Needed(BuildStage.Strung);
            return (needed.Bass.SaddleMm - Goal.Bass, needed.Treble.SaddleMm - Goal.Treble);
        }

        for (int step = 0; step < MaxSteps && !converged; step++)
        {
            (double bass, double treble) = Miss(even, tilt);
            (double bassE, double trebleE) = Miss(even + FirstStepMm, tilt);
            (double bassT, double trebleT) = Miss(even, tilt + FirstStepMm);
            double a = (bassE - bass) / FirstStepMm;
            double b = (bassT - bass) / FirstStepMm;
            double c = (trebleE - treble) / FirstStepMm;
            double d = (trebleT - treble) / FirstStepMm;
            double det = (a * d) - (b * c);
            if (Math.Abs(det) < LeastSlope)
            {
                break;
            }

            double moveEven = ((b * treble) - (d * bass)) / det;
            double moveTilt = ((c * bass) - (a * treble)) / det;
            even += moveEven;
            tilt += moveTilt;
            converged = Math.Abs(moveEven) + Math.Abs(moveTilt) < SettledMm;
        }

        ChainFigures f = model.Figures;
        (double least, double most) = limits.FingerboardMm;
        SolvedFigure Edge(string key, double mean, double tiltNow, double side)
        {
            double before = mean + (side * tiltNow);
            double asked = before + even + (side * tilt);
            return new(key, before, asked, Math.Clamp(asked, least, most));
        }

        SolvedFigure[] edges =
        [
            Edge("fingerboard.thickness_nut", f.FingerboardNutMm, f.NutTiltMm, -0.5),
            Edge("fingerboard.thickness_join", f.FingerboardJoinMm, f.JoinTiltMm, -0.5),
            Edge("fingerboard.thickness_nut_treble", f.FingerboardNutMm, f.NutTiltMm, 0.5),
            Edge("fingerboard.thickness_join_treble", f.FingerboardJoinMm, f.JoinTiltMm, 0.5),
        ];
        bool measured = IsMeasured(Unknown.FingerboardSides);
        bool possible = converged && !measured && edges.All(each => each.AfterMm == each.AskedMm);
        ChainModel after = Held(
            model with
            {
                Figures = f with
                {
                    FingerboardNutMm = 0.5 * (edges[0].AfterMm + edges[2].AfterMm),
                    FingerboardJoinMm = 0.5 * (edges[1].AfterMm + edges[3].AfterMm),
                    NutTiltMm = edges[2].AfterMm - edges[0].AfterMm,
                    JoinTiltMm = edges[3].AfterMm - edges[1].AfterMm,
                },
            },
            Unknown.FingerboardSides
        );
        HeightChain strung = after.At(BuildStage.Strung);
        string reason =
            possible ? ""
            : measured
                ? InstrumentWords.Of.Format("solve.measured", NameOf(Unknown.FingerboardSides))
            : InstrumentWords.Of.Format(
                "solve.sides",
                edges.Min(each => each.AskedMm),
                edges.Max(each => each.AskedMm),
                least,
                most
            );
        return new(
            Unknown.FingerboardSides,
            edges,
            possible,
            reason,
            Middle,
            after.At(BuildStage.OnBoard),
            strung,
            converged
        );
    }

    // Secant search from no change; the function is all but straight.
    private static (double Change, bool Converged, bool Moves) Search(Func<double, double> miss)
    {
        double x0 = 0;
        double f0 = miss(0);
        if (Math.Abs(f0) < SettledMm)
        {
            return (0, true, true);
        }

        double x1 = FirstStepMm;
        double f1 = miss(x1);
        for (int step = 0; step < MaxSteps; step++)
        {
            double slope = (f1 - f0) / (x1 - x0);
            if (Math.Abs(slope) < LeastSlope)
            {
                return (0, false, false);
            }

            // No step further than a chain of heights can reach.
            double move = Math.Clamp(-f1 / slope, -100, 100);
            (x0, f0) = (x1, f1);
            x1 += move;
            f1 = miss(x1);
            if (Math.Abs(f1) < SettledMm || x1 == x0)
            {
                return (x1, true, true);
            }
        }

        return (x1, false, true);
    }

    private ChainModel Tilted(double even, double tilt) =>
        model with
        {
            Figures = model.Figures with
            {
                FingerboardNutMm = model.Figures.FingerboardNutMm + even,
                FingerboardJoinMm = model.Figures.FingerboardJoinMm + even,
                NutTiltMm = model.Figures.NutTiltMm + tilt,
                JoinTiltMm = model.Figures.JoinTiltMm + tilt,
            },
        };

    // Solving for the action leaves the saddle held and the action to follow; all else is shown with the saddle that the action needs.
    private static ChainModel Held(ChainModel after, Unknown unknown) =>
        unknown == Unknown.Action
            ? after
            : after with
            {
                Figures = after.Figures with { SaddleBassMm = null, SaddleTrebleMm = null },
            };

    private string Why(Unknown unknown, double change, double least, bool found, double nearest)
    {
        if (!found)
        {
            return InstrumentWords.Of.Format("solve.no-effect", NameOf(unknown));
        }

        SolvedFigure[] keys = unknowns.Keys(unknown, change, nearest);
        double saddle = unknowns.Moved(unknown, nearest).Needed(BuildStage.Strung).SaddleMm;
        return Sentence(unknown, keys[0], change < least, saddle);
    }

    private static string Sentence(
        Unknown unknown,
        SolvedFigure figure,
        bool tooSmall,
        double saddle
    ) =>
        InstrumentWords.Of.Format(
            tooSmall ? "solve.too-small" : "solve.too-large",
            NameOf(unknown),
            figure.AskedMm,
            figure.AfterMm,
            saddle
        );

    private static string NameOf(Unknown unknown) =>
        Words($"unknown.{Design.Reading.Choices.NameOf(unknown)}");

    private static string Words(string key) => InstrumentWords.Of[key];
}

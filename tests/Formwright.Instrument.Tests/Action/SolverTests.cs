using CsCheck;
using Formwright.Design;
using Formwright.Instrument.Action;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class SolverTests
{
    private static readonly Func<double, double, double> Dome = (_, y) => 2.4 - (2e-4 * y * y);

    private static readonly Gen<string> Any = Gen.Select(
        Gen.Int[10, 14],
        Gen.Double[0.5, 3],
        Gen.Double[5, 7],
        Gen.Double[2.5, 4.5],
        Gen.Double[0, 0.3],
        (join, ramp, board, action, more) =>
            FormattableString.Invariant(
                $"[neck]\nramp = {ramp}\n[fingerboard]\nthickness_nut = {board}\nthickness_join = {board + more}\n"
            )
            + FormattableString.Invariant($"[action]\nbass = {action}\ntreble = {action - 0.5}\n")
            + $"# {join}\n"
    );

    // Move a figure, take the saddle that then comes out as held, solve: the figure comes back.
    [Theory]
    [InlineData(Unknown.Ramp)]
    [InlineData(Unknown.Dome)]
    [InlineData(Unknown.Fingerboard)]
    [InlineData(Unknown.FingerboardNut)]
    [InlineData(Unknown.FingerboardJoin)]
    [InlineData(Unknown.Action)]
    public void Solving_returns_to_the_figure_it_came_from(Unknown unknown) =>
        Gen.Select(Any, Gen.Double[-0.4, 0.4])
            .Holds(
                (sections, move) =>
                {
                    int join = int.Parse(sections[(sections.LastIndexOf('#') + 2)..], null);
                    InstrumentDesign design = Designs.Read(sections, $"join_fret = {join}\n");
                    ActionSetup setup = ActionSetup.Of(design, Dome);
                    ChainModel moved = Moved(setup.Model, unknown, move);
                    double held = moved.Needed(BuildStage.Strung).SaddleMm;
                    InstrumentDesign wanting = design with
                    {
                        Saddle = design.Saddle with { HeightMm = held },
                    };
                    SolveAnswer answer = new ActionSolver(
                        setup.Model,
                        wanting,
                        setup.DomePerHeight
                    ).For(unknown);
                    double share = unknown == Unknown.Dome ? 1 / setup.DomePerHeight : 1;
                    return answer.IsPossible
                        && Math.Abs(answer.ChangeMm - (move * share)) < 1e-8
                        && Math.Abs(answer.Strung.SaddleMm - held) < 1e-8;
                },
                iter: 60
            );

    [Fact]
    public void Solving_for_the_saddle_gives_the_action_and_for_the_action_the_saddle() =>
        Any.Holds(
            sections =>
            {
                int join = int.Parse(sections[(sections.LastIndexOf('#') + 2)..], null);
                InstrumentDesign design = Designs.Read(
                    sections + "[saddle]\nleast = 1\nmost = 30\n",
                    $"join_fret = {join}\n"
                );
                ActionSetup setup = ActionSetup.Of(design, (_, _) => 2.4);
                SolveAnswer saddle = new ActionSolver(setup.Model, design, 1).For(Unknown.Saddle);
                ChainModel made = setup.Model with
                {
                    Figures = setup.Model.Figures with
                    {
                        SaddleBassMm = saddle.Figures[0].AfterMm,
                        SaddleTrebleMm = saddle.Figures[1].AfterMm,
                        ActionBassMm = 1,
                        ActionTrebleMm = 1,
                    },
                };
                SolveAnswer action = new ActionSolver(made, design, 1).For(Unknown.Action);

                // The saddle between is a straight line in one and not quite in the other: some hundred-thousandths.
                return saddle.IsPossible
                    && Math.Abs(action.Figures[0].AskedMm - design.Action.BassMm) < 1e-4
                    && Math.Abs(action.Figures[1].AskedMm - design.Action.TrebleMm) < 1e-4;
            },
            iter: 60
        );

    [Fact]
    public void Both_edges_of_the_fingerboard_are_found_at_once()
    {
        InstrumentDesign design = Designs.Read(
            "[neck]\nramp = 1.5\n[saddle]\nheight_bass = 10.5\nheight_treble = 9.9\n"
        );
        ActionSetup setup = ActionSetup.Of(design, Dome);
        SolveAnswer answer = new ActionSolver(setup.Model, design, setup.DomePerHeight).For(
            Unknown.FingerboardSides
        );
        Assert.True(answer.IsPossible, answer.Reason);
        Assert.Equal(10.5, answer.Strung.Bass.SaddleMm, 1e-8);
        Assert.Equal(9.9, answer.Strung.Treble.SaddleMm, 1e-8);
        Assert.Equal(4, answer.Figures.Count);

        // Written back into the design it holds.
        string text =
            FormattableString.Invariant(
                $"[neck]\nramp = 1.5\n[fingerboard]\nthickness_nut = {answer.Figures[0].AfterMm}\nthickness_join = {answer.Figures[1].AfterMm}\n"
            )
            + FormattableString.Invariant(
                $"thickness_nut_treble = {answer.Figures[2].AfterMm}\nthickness_join_treble = {answer.Figures[3].AfterMm}\n"
            );
        HeightChain again = ActionSetup.Of(Designs.Read(text), Dome).Model.At(BuildStage.Strung);
        Assert.Equal(10.5, again.Bass.SaddleMm, 2e-3);
        Assert.Equal(9.9, again.Treble.SaddleMm, 2e-3);
    }

    [Fact]
    public void What_can_not_be_made_says_why_and_gives_the_nearest()
    {
        InstrumentDesign design = Designs.Read("[neck]\nramp = 0.2\n[saddle]\nheight = 20\n");
        ActionSetup setup = ActionSetup.Of(design, Dome);
        ActionSolver solver = new(setup.Model, design, setup.DomePerHeight);
        SolveAnswer ramp = solver.For(Unknown.Ramp);
        Assert.False(ramp.IsPossible);
        Assert.True(ramp.Figures[0].AskedMm < 0);
        Assert.Equal(0, ramp.Figures[0].AfterMm);
        Assert.Contains("0.00", ramp.Reason, StringComparison.Ordinal);
        Assert.Equal(0.2, ramp.Figures[0].BeforeMm);
        SolveAnswer thick = solver.For(Unknown.Fingerboard);
        Assert.False(thick.IsPossible);
        Assert.Equal(SolveLimits.MostFingerboardMm, thick.Figures[0].AfterMm, 1e-9);

        InstrumentDesign steep = Designs.Read("[neck]\nramp = 9\n");
        ActionSetup steepSetup = ActionSetup.Of(steep, Dome);
        SolveAnswer saddle = new ActionSolver(steepSetup.Model, steep, 1).For(Unknown.Saddle);
        Assert.False(saddle.IsPossible);
        Assert.Equal(8, saddle.Figures[0].AfterMm);
        Assert.True(saddle.Strung.Bass.Action12Mm > 4);
        Assert.NotEmpty(saddle.Reason);

        InstrumentDesign flat = Designs.Read("[dome]\nheight = 0\n");
        ActionSetup flatSetup = ActionSetup.Of(flat, (_, _) => 0);
        SolveAnswer dome = new ActionSolver(flatSetup.Model, flat, flatSetup.DomePerHeight).For(
            Unknown.Dome
        );
        Assert.False(dome.IsPossible);
        Assert.NotEmpty(dome.Reason);
    }

    private static ChainModel Moved(ChainModel model, Unknown unknown, double move)
    {
        ChainFigures f = model.Figures;
        return model with
        {
            Figures = unknown switch
            {
                Unknown.Ramp => f with { RampMm = f.RampMm + move },
                Unknown.Dome => f with
                {
                    DomeBoardMm = f.DomeBoardMm + move,
                    DomeFreeMm = f.DomeFreeMm + move,
                },
                Unknown.Fingerboard => f with
                {
                    FingerboardNutMm = f.FingerboardNutMm + move,
                    FingerboardJoinMm = f.FingerboardJoinMm + move,
                },
                Unknown.FingerboardNut => f with { FingerboardNutMm = f.FingerboardNutMm + move },
                Unknown.FingerboardJoin => f with
                {
                    FingerboardJoinMm = f.FingerboardJoinMm + move,
                },
                _ => f with
                {
                    ActionBassMm = f.ActionBassMm + move,
                    ActionTrebleMm = f.ActionTrebleMm + move,
                },
            },
        };
    }
}

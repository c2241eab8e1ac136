using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument.Tolerances;

namespace Formwright.Instrument.Action;

/// <summary>
/// The chain with what the bench found in the place of what was computed. A measured figure carries the measurement's tolerance; what it
/// takes the place of carries none any more.
/// </summary>
/// <param name="Model">The chain.</param>
/// <param name="Tolerances">What is still open.</param>
/// <param name="Rows">Measured beside computed, in the order of the build.</param>
public sealed record MeasuredSoFar(
    ChainModel Model,
    ChainTolerances Tolerances,
    IReadOnlyList<MeasuredRow> Rows
)
{
    private const int Rounds = 6;

    /// <summary>Puts the measurements of a design into its chain.</summary>
    public static MeasuredSoFar Of(ActionSetup setup, InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(design);
        Bench bench = new(setup, design.Measured);
        bench.Wood();
        bench.Domes();
        bench.Projection();
        bench.Strung();
        return new(bench.Model, bench.Tolerances, bench.Rows);
    }

    private sealed class Bench(ActionSetup setup, MeasuredDesign measured)
    {
        private const double RadToDeg = 180 / Math.PI;

        public ChainModel Model { get; private set; } = setup.Model;

        public ChainTolerances Tolerances { get; private set; } = setup.Tolerances;

        public List<MeasuredRow> Rows { get; } = [];

        private ChainFigures Figures => Model.Figures;

        public void Wood()
        {
            if (measured.RampMm is { } ramp)
            {
                Row("ramp", Figures.RampMm, ramp, Half(ChainInput.Ramp));
                Set(Figures with { RampMm = ramp });
                Known(ChainInput.Ramp);
            }

            if (measured.NeckFreeMm is { } neck)
            {
                double half =
                    Half(ChainInput.Ramp)
                    + Half(ChainInput.NeckOffBoard)
                    + Half(ChainInput.NeckAfterGlueing);
                Row("neck_free", Figures.NeckMm(BuildStage.Free), neck, half);
                Set(Figures with { OffBoardMm = neck - Figures.RampMm, AfterGlueingMm = 0 });
                Known(ChainInput.NeckOffBoard, ChainInput.Ramp, ChainInput.NeckAfterGlueing);
            }

            if (measured.FingerboardNutMm is { } nut)
            {
                Row(
                    "fingerboard_nut",
                    Figures.FingerboardNutMm,
                    nut,
                    Half(ChainInput.FingerboardNut)
                );
                Set(Figures with { FingerboardNutMm = nut });
                Known(ChainInput.FingerboardNut);
            }

            if (measured.FingerboardJoinMm is { } join)
            {
                Row(
                    "fingerboard_join",
                    Figures.FingerboardJoinMm,
                    join,
                    Half(ChainInput.FingerboardJoin)
                );
                Set(Figures with { FingerboardJoinMm = join });
                Known(ChainInput.FingerboardJoin);
            }

            if (measured.FretHeightMm is { } fret)
            {
                Row("fret_height", Figures.FretHeightMm, fret, Half(ChainInput.FretHeight));
                Set(Figures with { FretHeightMm = fret });
                Known(ChainInput.FretHeight);
            }
        }

        // A dome that came out otherwise at one stage moves the later ones with it until they are measured themselves.
        public void Domes()
        {
            if (measured.DomeBoardMm is { } board)
            {
                double off = board - Figures.DomeBoardMm;
                Row("dome_board", Figures.DomeBoardMm, board, Half(ChainInput.DomeBoard));
                Set(
                    Figures with
                    {
                        DomeBoardMm = board,
                        DomeFreeMm = Figures.DomeFreeMm + off,
                        DomeStrungMm = Figures.DomeStrungMm + off,
                    }
                );
                Known(ChainInput.DomeBoard);
            }

            if (measured.DomeFreeMm is { } free)
            {
                double off = free - Figures.DomeFreeMm;
                Row("dome_free", Figures.DomeFreeMm, free, Half(ChainInput.DomeFree));
                Set(Figures with { DomeFreeMm = free, DomeStrungMm = Figures.DomeStrungMm + off });
                Known(ChainInput.DomeFree);
            }
        }

        // The straight edge sees ramp, fingerboard, frets and dome at once: what it finds is put into the dome, or if that is measured into the neck.
        public void Projection()
        {
            if (measured.ProjectionMm is not { } projection)
            {
                return;
            }

            double computed = Model.At(BuildStage.Free).ProjectionMm;
            double atNut = SaddleOverJoin() - 1;
            double half =
                (
                    atNut
                    * (
                        Half(ChainInput.Ramp)
                        + Half(ChainInput.NeckOffBoard)
                        + Half(ChainInput.NeckAfterGlueing)
                        + Half(ChainInput.FingerboardNut)
                    )
                )
                + (SaddleOverJoin() * Half(ChainInput.FingerboardJoin))
                + Half(ChainInput.FretHeight)
                + Half(ChainInput.DomeFree);
            Row("projection", computed, projection, half);
            double off = computed - projection;
            if (measured.DomeFreeMm is null)
            {
                Set(
                    Figures with
                    {
                        DomeFreeMm = Figures.DomeFreeMm + off,
                        DomeStrungMm = Figures.DomeStrungMm + off,
                    }
                );
            }
            else
            {
                Set(Figures with { OffBoardMm = Figures.OffBoardMm + (off / atNut) });
            }

            Settle(
                ChainInput.Ramp,
                ChainInput.NeckOffBoard,
                ChainInput.NeckAfterGlueing,
                ChainInput.FingerboardNut,
                ChainInput.FingerboardJoin
            );
            Known(ChainInput.DomeFree);
        }

        public void Strung()
        {
            if (measured.DomeStrungMm is { } dome)
            {
                double half = Figures.DomeStrungMm is null
                    ? Half(ChainInput.DomeFree)
                        + Half(ChainInput.BridgeRise)
                        + (
                            Half(ChainInput.BridgeRotation)
                            / RadToDeg
                            * Model.Geometry.SaddleAheadMm
                        )
                    : Half(ChainInput.DomeStrung);
                Row(
                    "dome_strung",
                    Figures.DomeMm(BuildStage.Strung, Model.Geometry.SaddleAheadMm),
                    dome,
                    half
                );
                Set(Figures with { DomeStrungMm = dome, BridgeRotationRad = 0 });
                Settle(ChainInput.BridgeRise, ChainInput.BridgeRotation, ChainInput.DomeFree);
                Known(ChainInput.DomeStrung);
            }

            if (measured.SaddleBassMm is { } bass && measured.SaddleTrebleMm is { } treble)
            {
                HeightChain before = Model.At(BuildStage.Strung);
                Row("saddle_bass", before.Bass.SaddleMm, bass, Half(ChainInput.Saddle));
                Row("saddle_treble", before.Treble.SaddleMm, treble, Half(ChainInput.Saddle));
                Set(Figures with { SaddleBassMm = bass, SaddleTrebleMm = treble });
                Known(ChainInput.Saddle);
            }

            NutRise();
            Action();
        }

        // A rise that differs is put down to the rotation at the join.
        private void NutRise()
        {
            if (measured.NutRiseMm is not { } rise)
            {
                return;
            }

            double reach = Model.Geometry.JoinMm * (1 + Figures.Creep);
            Row("nut_rise", Model.At(BuildStage.Strung).NutRiseMm, rise, RiseHalf());
            for (int i = 0; i < Rounds; i++)
            {
                double off = rise - Model.At(BuildStage.Strung).NutRiseMm;
                Set(Figures with { JoinRotationRad = Figures.JoinRotationRad + (off / reach) });
            }

            Settle(
                ChainInput.Creep,
                ChainInput.NeckModulus,
                ChainInput.FingerboardModulus,
                ChainInput.NeckThickness,
                ChainInput.Tension
            );
            Tolerances = Tolerances.With(
                measured.WithinMm / reach * RadToDeg,
                ChainInput.JoinRotation
            );
        }

        // A measured action closes the chain: what it shows over the computed one is carried at the saddle.
        private void Action()
        {
            if (measured.ActionBassMm is not { } bass || measured.ActionTrebleMm is not { } treble)
            {
                return;
            }

            ActionBatch batch = new(Model, Tolerances);
            IReadOnlyList<Budget> budgets = Propagation.Of(
                batch,
                [(int)ActionOutput.ActionBass, (int)ActionOutput.ActionTreble]
            );
            HeightChain before = Model.At(BuildStage.Strung);
            Row("action_bass", before.Bass.Action12Mm, bass, budgets[0].WorstCase);
            Row("action_treble", before.Treble.Action12Mm, treble, budgets[1].WorstCase);
            double perMm = Model.Geometry.SaddleMm[0] / Model.Geometry.ActionFretMm;
            for (int i = 0; i < Rounds; i++)
            {
                HeightChain now = Model.At(BuildStage.Strung);
                Set(
                    Figures with
                    {
                        CorrectionBassMm =
                            Figures.CorrectionBassMm + (perMm * (bass - now.Bass.Action12Mm)),
                        CorrectionTrebleMm =
                            Figures.CorrectionTrebleMm + (perMm * (treble - now.Treble.Action12Mm)),
                    }
                );
            }

            Settle([.. ChainTolerances.Inputs]);
            Tolerances = Tolerances.With(measured.WithinMm * perMm, ChainInput.Saddle);
        }

        private double RiseHalf()
        {
            double join = Model.Geometry.JoinMm;
            double grown = 1 + Figures.Creep;
            double rise = Model.At(BuildStage.Strung).NutRiseMm;
            double half =
                (Half(ChainInput.JoinRotation) / RadToDeg * join * grown)
                + (Half(ChainInput.Creep) * rise / grown);
            (ChainInput Input, Func<double, ChainFigures> Change)[] stiffness =
            [
                (
                    ChainInput.NeckModulus,
                    a => Figures with { NeckModulusMPa = Figures.NeckModulusMPa * (1 + (a / 100)) }
                ),
                (
                    ChainInput.FingerboardModulus,
                    a =>
                        Figures with
                        {
                            FingerboardModulusMPa = Figures.FingerboardModulusMPa * (1 + (a / 100)),
                        }
                ),
                (ChainInput.NeckThickness, a => Figures with { NeckThickerMm = a }),
                (
                    ChainInput.Tension,
                    a => Figures with { TensionFactor = Figures.TensionFactor * (1 + (a / 100)) }
                ),
            ];
            foreach ((ChainInput input, Func<double, ChainFigures> change) in stiffness)
            {
                ChainModel moved = Model with { Figures = change(Half(input)) };
                half += Math.Abs(moved.At(BuildStage.Strung).NutRiseMm - rise);
            }

            return half;
        }

        private double SaddleOverJoin() =>
            0.5
            * (Model.Geometry.SaddleMm[0] + Model.Geometry.SaddleMm[^1])
            / Model.Geometry.JoinMm;

        private double Half(ChainInput input)
        {
            (InputShape shape, double spread) = Tolerances[input];
            return new UncertainInput("", 0, shape, spread).HalfWidth;
        }

        private void Row(string key, double computed, double found, double half) =>
            Rows.Add(new(key, computed, found, half + measured.WithinMm));

        private void Set(ChainFigures figures) => Model = Model with { Figures = figures };

        // The first carries the measurement's tolerance, the others go into it.
        private void Known(ChainInput input, params ReadOnlySpan<ChainInput> others)
        {
            Tolerances = Tolerances.With(0, others).With(measured.WithinMm, input);
        }

        private void Settle(params ReadOnlySpan<ChainInput> inputs) =>
            Tolerances = Tolerances.With(0, inputs);
    }
}

using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Formwright.Design.Sections;
using Formwright.Instrument.Tolerances;

namespace Formwright.Instrument.Action;

/// <summary>
/// The strung chain for many builds at once, four in each vector: the same formulas as <see cref="ChainModel"/>, with the neck's bending solved for
/// its dependence on the strings' heights in closed form. Only the outermost strings come out.
/// </summary>
/// <remarks>Outputs: <see cref="ActionOutput"/>. Inputs: <see cref="ChainInput"/> in order, in the units of <c>[tolerances]</c>.</remarks>
public sealed class ActionBatch : IBatchModel
{
    private const double DegToRad = Math.PI / 180;
    private readonly ChainFigures figures;
    private readonly ChainGeometry geometry;
    private readonly double saddleBass;
    private readonly double saddleTreble;
    private readonly StringSums sums;
    private readonly BatchBending bending;

    /// <summary>Sets the model up at the chain's own figures.</summary>
    /// <param name="model">The chain; its saddle is the given one, or the one that the strung chain asks for.</param>
    /// <param name="tolerances">How far each figure may be off.</param>
    public ActionBatch(ChainModel model, ChainTolerances tolerances)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(tolerances);
        figures = model.Figures;
        geometry = model.Geometry;
        HeightChain strung = model.At(BuildStage.Strung);
        saddleBass = strung.Bass.SaddleMm;
        saddleTreble = strung.Treble.SaddleMm;
        sums = StringSums.Of(figures, geometry, strung);
        bending = new BatchBending(geometry, sums.Total, sums.NutHeight);
        Inputs =
        [
            .. ChainTolerances.Inputs.Select(input => new UncertainInput(
                TolerancesDesign.KeyOf(input),
                ValueOf(figures, input),
                tolerances[input].Shape,
                tolerances[input].Spread
            )),
        ];
    }

    public IReadOnlyList<UncertainInput> Inputs { get; }

    public int OutputCount { get; } = Enum.GetValues<ActionOutput>().Length;

    public void Evaluate(ReadOnlySpan<double> inputs, Span<double> outputs, int stride, int count)
    {
        ReadOnlySpan<Vector256<double>> from = MemoryMarshal.Cast<double, Vector256<double>>(
            inputs
        );
        Span<Vector256<double>> to = MemoryMarshal.Cast<double, Vector256<double>>(outputs);
        int step = stride / Vector256<double>.Count;
        int groups = (count + Vector256<double>.Count - 1) / Vector256<double>.Count;
        for (int n = 0; n < groups; n++)
        {
            Evaluate(from[n..], to[n..], step);
        }
    }

    /// <summary>A figure's value in the unit of its tolerance.</summary>
    private static double ValueOf(ChainFigures figures, ChainInput input) =>
        input switch
        {
            ChainInput.Ramp => figures.RampMm,
            ChainInput.NeckOffBoard => figures.OffBoardMm,
            ChainInput.NeckAfterGlueing => figures.AfterGlueingMm,
            ChainInput.FingerboardNut => figures.FingerboardNutMm,
            ChainInput.FingerboardJoin => figures.FingerboardJoinMm,
            ChainInput.FretHeight => figures.FretHeightMm,
            ChainInput.DomeBoard => figures.DomeBoardMm,
            ChainInput.DomeFree => figures.DomeFreeMm,
            ChainInput.DomeStrung => figures.DomeStrungMm ?? 0,
            ChainInput.BridgeRise => figures.BridgeRiseMm,
            ChainInput.BridgeRotation => figures.BridgeRotationRad / DegToRad,
            ChainInput.JoinRotation => figures.JoinRotationRad / DegToRad,
            ChainInput.Creep => figures.Creep,
            ChainInput.NeckModulus or ChainInput.FingerboardModulus => 100,
            ChainInput.NeckThickness => figures.NeckThickerMm,
            ChainInput.Tension => 100 * figures.TensionFactor,
            _ => 0,
        };

    private void Evaluate(ReadOnlySpan<Vector256<double>> x, Span<Vector256<double>> y, int step)
    {
        Vector256<double> In(ReadOnlySpan<Vector256<double>> all, ChainInput input) =>
            all[(int)input * step];

        Vector256<double> neck =
            In(x, ChainInput.Ramp)
            + In(x, ChainInput.NeckOffBoard)
            + In(x, ChainInput.NeckAfterGlueing);
        Vector256<double> boardNut = In(x, ChainInput.FingerboardNut);
        Vector256<double> boardJoin = In(x, ChainInput.FingerboardJoin);
        Vector256<double> fret = In(x, ChainInput.FretHeight);
        Vector256<double> nutUp = In(x, ChainInput.NutClearance);
        Vector256<double> saddleUp = In(x, ChainInput.Saddle);
        Vector256<double> grown = Vector256<double>.One + In(x, ChainInput.Creep);
        Vector256<double> rotation = In(x, ChainInput.JoinRotation) * DegToRad;
        Vector256<double> tension = In(x, ChainInput.Tension) * 0.01;
        Vector256<double> dome =
            (
                figures.DomeStrungMm is null
                    ? In(x, ChainInput.DomeFree) + In(x, ChainInput.BridgeRise)
                    : In(x, ChainInput.DomeStrung)
            ) - (In(x, ChainInput.BridgeRotation) * (DegToRad * geometry.SaddleAheadMm));

        BatchBending.Bending bend = bending.Of(
            boardNut,
            boardJoin,
            fret,
            nutUp,
            tension,
            In(x, ChainInput.NeckModulus) * (0.01 * figures.NeckModulusMPa),
            In(x, ChainInput.FingerboardModulus) * (0.01 * figures.FingerboardModulusMPa),
            In(x, ChainInput.NeckThickness)
        );

        // The rise is linear in H = Σ T h at the join, and H in the rise: both ways of closing the chain have a closed form.
        Vector256<double> turned = rotation * geometry.JoinMm;
        Vector256<double> turnedAtAction = rotation * (geometry.JoinMm - geometry.ActionFretMm);
        Vector256<double> nutTop = neck + boardNut + fret + nutUp;
        Vector256<double> plane = PlaneAtAction(neck, boardNut, boardJoin) + fret;
        Vector256<double> common = (boardJoin + fret) * sums.Total;
        Vector256<double> perNut = bend.NutPerMoment * grown;
        Vector256<double> perAction = bend.ActionPerMoment * grown;
        Vector256<double> freeNut = (bend.Nut + turned) * grown;
        Vector256<double> freeAction = (bend.Action + turnedAtAction) * grown;

        // With the saddle as it is.
        Vector256<double> held =
            tension
            * (
                ((nutTop + freeNut) * sums.NutSide)
                + (dome * sums.Dome)
                + (saddleUp * sums.SaddleSide)
                - common
                + Vector256.Create(sums.Rest)
            )
            / (Vector256<double>.One - (tension * perNut * sums.NutSide));
        Vector256<double> rise = freeNut + (held * perNut);
        Vector256<double> riseAtAction = freeAction + (held * perAction);

        // With the saddle that the action wanted asks for.
        Vector256<double> wanted =
            tension
            * (
                ((nutTop + freeNut) * sums.WantedNutSide)
                + ((plane + freeAction) * sums.WantedActionSide)
                - common
                + Vector256.Create(sums.WantedRest)
            )
            / (
                Vector256<double>.One
                - (tension * ((perNut * sums.WantedNutSide) + (perAction * sums.WantedActionSide)))
            );
        Vector256<double> wantedRise = freeNut + (wanted * perNut);
        Vector256<double> wantedAtAction = freeAction + (wanted * perAction);

        EndString low = new(this, 0);
        EndString high = new(this, geometry.Count - 1);
        Vector256<double> bass = low.Action(nutTop + rise, plane + riseAtAction, dome, saddleUp);
        Vector256<double> treble = high.Action(nutTop + rise, plane + riseAtAction, dome, saddleUp);
        Vector256<double> needBass = low.Saddle(nutTop + wantedRise, plane + wantedAtAction, dome);
        Vector256<double> needTreble = high.Saddle(
            nutTop + wantedRise,
            plane + wantedAtAction,
            dome
        );
        Vector256<double> missBass = bass - Vector256.Create(figures.ActionBassMm);
        Vector256<double> missTreble = treble - Vector256.Create(figures.ActionTrebleMm);
        y[step * (int)ActionOutput.ActionBass] = bass;
        y[step * (int)ActionOutput.ActionTreble] = treble;
        y[step * (int)ActionOutput.SaddleBass] = needBass;
        y[step * (int)ActionOutput.SaddleTreble] = needTreble;
        y[step * (int)ActionOutput.LowestMiss] = Vector256.Min(missBass, missTreble);
        y[step * (int)ActionOutput.HighestMiss] = Vector256.Max(missBass, missTreble);
        y[step * (int)ActionOutput.LowestSaddle] = Vector256.Min(needBass, needTreble);
        y[step * (int)ActionOutput.HighestSaddle] = Vector256.Max(needBass, needTreble);
    }

    // Fingerboard's top at fret 12 on the centreline, without load; a string's own tilt stands in EndString.
    private Vector256<double> PlaneAtAction(
        Vector256<double> neck,
        Vector256<double> boardNut,
        Vector256<double> boardJoin
    )
    {
        double along = geometry.ActionFretMm / geometry.JoinMm;
        Vector256<double> top =
            geometry.FollowsKink && along > 1
                ? boardJoin
                    + ((boardJoin - boardNut) * (along - 1))
                    + Vector256.Create(geometry.BodyMm[ChainGeometry.ActionFret])
                : ((neck + boardNut) * (1 - along)) + (boardJoin * along);
        double planed = along is > 0 and < 1 ? 4 * figures.BowPlanedMm * along * (1 - along) : 0;
        return top - Vector256.Create(planed);
    }

    /// <summary>One of the outermost strings.</summary>
    private readonly struct EndString
    {
        private readonly double nutOwn;
        private readonly double fretOwn;
        private readonly double domeShare;
        private readonly double saddle;
        private readonly double correction;
        private readonly double wanted;
        private readonly double share;

        public EndString(ActionBatch batch, int i)
        {
            ChainGeometry geometry = batch.geometry;
            ChainFigures figures = batch.figures;
            bool isBass = i == 0;
            (double nutTilt, double actionTilt) = StringSums.TiltOf(figures, geometry, i);
            nutOwn = nutTilt + (isBass ? figures.NutBassMm : figures.NutTrebleMm);
            fretOwn = actionTilt;
            domeShare = geometry.DomeShares[i];
            correction = isBass ? figures.CorrectionBassMm : figures.CorrectionTrebleMm;
            saddle = (isBass ? batch.saddleBass : batch.saddleTreble) + correction;
            wanted = isBass ? figures.ActionBassMm : figures.ActionTrebleMm;
            share =
                (geometry.ActionFretMm - geometry.NutMm[i])
                / (geometry.SaddleMm[i] - geometry.NutMm[i]);
        }

        public Vector256<double> Action(
            Vector256<double> nut,
            Vector256<double> fret,
            Vector256<double> dome,
            Vector256<double> saddleUp
        )
        {
            Vector256<double> nutZ = nut + Vector256.Create(nutOwn);
            Vector256<double> saddleZ = (dome * domeShare) + saddleUp + Vector256.Create(saddle);
            return nutZ + ((saddleZ - nutZ) * share) - fret - Vector256.Create(fretOwn);
        }

        public Vector256<double> Saddle(
            Vector256<double> nut,
            Vector256<double> fret,
            Vector256<double> dome
        )
        {
            Vector256<double> nutZ = nut + Vector256.Create(nutOwn);
            Vector256<double> atAction = fret + Vector256.Create(fretOwn + wanted);
            return nutZ
                + ((atAction - nutZ) * (1 / share))
                - (dome * domeShare)
                - Vector256.Create(correction);
        }
    }
}

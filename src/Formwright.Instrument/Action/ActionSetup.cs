using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument.Necks;
using Formwright.Instrument.Plates;
using Formwright.Instrument.Strings;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Action;

/// <summary>The height chain of a design before anything is measured: figures, geometry, tolerances, intonation.</summary>
/// <param name="Model">The chain.</param>
/// <param name="Tolerances">How far each figure may be off.</param>
/// <param name="Intonation">Ways of setting nut and saddle.</param>
/// <param name="DomePerHeight">Dome under the saddle on the centreline for one mm of <c>dome.height</c>; 0 where there is no dome.</param>
public sealed record ActionSetup(
    ChainModel Model,
    ChainTolerances Tolerances,
    Intonation Intonation,
    double DomePerHeight
)
{
    private const double DegToRad = Math.PI / 180;

    /// <summary>Sets the chain up.</summary>
    /// <param name="design">The design.</param>
    /// <param name="domeMm">Height of the soundboard over the datum on the board, at (x from the nut, y towards the treble side), mm.</param>
    /// <param name="bridge">How the bridge moves under the strings where that is computed; null: as the design states.</param>
    public static ActionSetup Of(
        InstrumentDesign design,
        Func<double, double, double> domeMm,
        BridgeMotion? bridge = null
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(domeMm);
        StringSet strings = StringSet.Of(design);
        IReadOnlyList<double> frets = FretScale.Table(
            design.Identity.ScaleMm,
            design.Identity.Frets
        );
        double scale = design.Identity.ScaleMm;
        double[] none = new double[strings.Strings.Count];
        double[] bare = [.. none.Select(_ => scale)];
        double centre = domeMm(scale, 0);
        ChainFigures figures = FiguresOf(design, centre, bridge);
        ChainGeometry geometry = GeometryOf(design, strings, frets, domeMm, none, bare);
        Intonation intonation = Intonation.Of(HeightsFor(new(figures, geometry)), frets);
        IntonationPlan plan = intonation.Of(design.Saddle.Compensation);
        double[] nut = [.. plan.Strings.Select(each => each.NutMm)];
        double[] saddle = [.. plan.Strings.Select(each => scale + each.SaddleMm)];
        double at = 0.5 * (saddle[0] + saddle[^1]);
        double dome = domeMm(at, 0);
        figures = FiguresOf(design, dome, bridge);
        geometry = GeometryOf(design, strings, frets, domeMm, nut, saddle);
        return new(
            new(figures, geometry),
            Toleranced(design, bridge),
            intonation,
            design.Dome.HeightMm > 0 ? dome / design.Dome.HeightMm : 0
        );
    }

    /// <summary>What each string does when fretted, with the heights that the strung chain gives (or the action that is wanted).</summary>
    private static FrettedString[] HeightsFor(ChainModel model)
    {
        HeightChain strung = model.At(BuildStage.Strung);
        ChainGeometry geometry = model.Geometry;
        double scale = geometry.Strings.ScaleMm;
        FrettedString[] each = new FrettedString[geometry.Count];
        for (int i = 0; i < each.Length; i++)
        {
            StringHeights heights = strung.Strings[i];
            double nut = heights.ActionMm[0];
            double at12 = heights.Action12Mm;
            double saddle = nut + ((at12 - nut) * scale / geometry.ActionFretMm);
            each[i] = new(geometry.Strings.Strings[i], scale, nut, Math.Max(saddle, 0));
        }

        return each;
    }

    private static ChainFigures FiguresOf(
        InstrumentDesign design,
        double domeMm,
        BridgeMotion? bridge
    )
    {
        FingerboardDesign board = design.Fingerboard;
        double nutTreble = board.ThicknessNutTrebleMm ?? board.ThicknessNutMm;
        double joinTreble = board.ThicknessJoinTrebleMm ?? board.ThicknessJoinMm;
        double height = design.Dome.HeightMm;
        double At(double greatest) => height > 0 ? domeMm * greatest / height : greatest;
        return new()
        {
            RampMm = design.Neck.RampMm,
            OffBoardMm = design.Neck.OffBoardMm,
            AfterGlueingMm = design.Neck.AfterGlueingMm,
            FingerboardNutMm = 0.5 * (board.ThicknessNutMm + nutTreble),
            FingerboardJoinMm = 0.5 * (board.ThicknessJoinMm + joinTreble),
            NutTiltMm = nutTreble - board.ThicknessNutMm,
            JoinTiltMm = joinTreble - board.ThicknessJoinMm,
            BowPlanedMm = board.BowPlanedMm,
            FretHeightMm = board.FretHeightMm,
            NutBassMm = design.Action.NutBassMm,
            NutTrebleMm = design.Action.NutTrebleMm,
            DomeBoardMm = domeMm,
            DomeFreeMm = At(design.Dome.FreeMm ?? height),
            DomeStrungMm = design.Dome.StrungMm is { } strung ? At(strung) : null,
            BridgeRiseMm = bridge?.RiseMm ?? design.Load.BridgeRiseMm,
            BridgeRotationRad = bridge?.RotationRad ?? design.Load.BridgeRotationDeg * DegToRad,
            JoinRotationRad = design.Load.JoinRotationDeg * DegToRad,
            Creep = design.Load.Creep,
            NeckModulusMPa = Timber.Of(design.Wood.Neck).ModulusLongMPa,
            FingerboardModulusMPa = Timber.Of(design.Wood.Fingerboard).ModulusLongMPa,
            NeckThickerMm = 0,
            TensionFactor = 1,
            ActionBassMm = design.Action.BassMm,
            ActionTrebleMm = design.Action.TrebleMm,
            SaddleBassMm = design.Saddle.HeightBassMm,
            SaddleTrebleMm = design.Saddle.HeightTrebleMm,
        };
    }

    private static ChainGeometry GeometryOf(
        InstrumentDesign design,
        StringSet strings,
        IReadOnlyList<double> frets,
        Func<double, double, double> domeMm,
        double[] nut,
        double[] saddle
    )
    {
        double join = design.Identity.JoinMm;
        double scale = design.Identity.ScaleMm;
        double middle = domeMm(0.5 * (saddle[0] + saddle[^1]), 0);
        double[] shares = new double[saddle.Length];
        double[] atNut = new double[saddle.Length];
        double[] atJoin = new double[saddle.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            InstrumentString each = strings.Strings[i];
            double dome = domeMm(saddle[i], each.SaddleYMm);
            shares[i] = Math.Abs(middle) > 1e-9 ? dome / middle : 1;
            atNut[i] = each.NutYMm / design.Neck.WidthNutMm;
            atJoin[i] = each.YAt(join / scale) / design.Neck.WidthJoinMm;
        }

        return new(
            strings,
            frets,
            join,
            nut,
            saddle,
            shares,
            [.. frets.Select(x => x > join ? domeMm(x, 0) : 0)],
            atNut,
            atJoin,
            NeckProfile.Of(design.Neck, join),
            design.Fingerboard.FollowsKink,
            design.Saddle.AheadMm,
            design.Saddle.TieBehindMm,
            design.Saddle.TieHeightMm
        );
    }

    // Where the strung dome is a figure of its own, its tolerance counts and that of the bridge's rise does not, and the other way round.
    // A computed movement of the bridge brings its own uncertainty, unless the maker states one.
    private static ChainTolerances Toleranced(InstrumentDesign design, BridgeMotion? bridge)
    {
        ChainTolerances all = ChainTolerances.Of(design.Tolerances);
        if (bridge is not null && !design.Tolerances.Of[ChainInput.BridgeRise].IsStated)
        {
            all = all.WithDeviation(ChainInput.BridgeRise, bridge.RiseUncertaintyMm);
        }

        if (bridge is not null && !design.Tolerances.Of[ChainInput.BridgeRotation].IsStated)
        {
            all = all.WithDeviation(
                ChainInput.BridgeRotation,
                bridge.RotationUncertaintyRad / DegToRad
            );
        }

        return design.Dome.StrungMm is null
            ? all.With(0, ChainInput.DomeStrung)
            : all.With(0, ChainInput.BridgeRise);
    }
}

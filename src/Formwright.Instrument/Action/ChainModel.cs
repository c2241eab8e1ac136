namespace Formwright.Instrument.Action;

/// <summary>
/// The height chain: for every string the heights at nut, frets and saddle over the datum. Method and words are those of the design's own
/// definition: the fret plane is one straight line per string through nut and join, less the bow; the string is straight from nut to saddle.
/// </summary>
/// <param name="Figures">What the maker sets.</param>
/// <param name="Geometry">Where things stand.</param>
public sealed record ChainModel(ChainFigures Figures, ChainGeometry Geometry)
{
    private const int MaxSteps = 40;
    private const double SettledMm = 1e-12;

    /// <summary>The chain at a stage, with the saddle as given where it is, else with the saddle that gives the wanted action.</summary>
    public HeightChain At(BuildStage stage) => At(stage, Figures.SaddleBassMm is not null);

    /// <summary>The chain at a stage with the saddle that gives the wanted action, whatever saddle is given.</summary>
    public HeightChain Needed(BuildStage stage) => At(stage, saddleGiven: false);

    private HeightChain At(BuildStage stage, bool saddleGiven)
    {
        int count = Geometry.Count;
        double[] nutZ = new double[count];
        double[] saddleZ = new double[count];
        double domeMm = Figures.DomeMm(stage, Geometry.SaddleAheadMm);
        bool strung = stage == BuildStage.Strung;
        NeckLoad? load = strung ? new NeckLoad(Figures, Geometry) : null;
        double grown = 1 + Figures.Creep;
        double join = Geometry.JoinMm;
        double action = Geometry.ActionFretMm;

        // The rise depends a little on the strings' heights, and they on it: a contraction by about 1 in 100.
        double moment = 0;
        double rise = 0;
        bool converged = !strung;
        for (int step = 0; step < MaxSteps; step++)
        {
            rise = strung ? (load!.AtNut(moment) + (Figures.JoinRotationRad * join)) * grown : 0;
            double atAction = strung ? RiseAt(load!, action, moment) : 0;
            Lines(stage, saddleGiven, domeMm, rise, atAction, nutZ, saddleZ);
            if (!strung)
            {
                break;
            }

            double next = JoinMoment(nutZ, saddleZ);
            double change = Math.Abs(load!.AtNut(next) - load.AtNut(moment));
            moment = next;
            if (change < SettledMm)
            {
                converged = true;
                break;
            }
        }

        return Chain(stage, saddleGiven, domeMm, load, moment, rise, nutZ, saddleZ, converged);
    }

    private HeightChain Chain(
        BuildStage stage,
        bool saddleGiven,
        double domeMm,
        NeckLoad? load,
        double moment,
        double rise,
        double[] nutZ,
        double[] saddleZ,
        bool converged
    )
    {
        IReadOnlyList<double> frets = Geometry.FretsMm;
        double join = Geometry.JoinMm;
        double[] raised = new double[frets.Count];
        List<double> bow = [];
        for (int k = 0; k < frets.Count; k++)
        {
            double x = frets[k];
            raised[k] = (load is null ? 0 : RiseAt(load, x, moment)) - Planed(x);
            if (x <= join + 1e-6)
            {
                bow.Add((rise * (1 - (x / join))) - raised[k]);
            }
        }

        StringHeights[] strings = new StringHeights[Geometry.Count];
        for (int i = 0; i < strings.Length; i++)
        {
            strings[i] = HeightsOf(i, stage, domeMm, nutZ[i], saddleZ[i], raised);
        }

        double neck = Figures.NeckMm(stage) + rise;
        double saddleMm = 0.5 * (Geometry.SaddleMm[0] + Geometry.SaddleMm[^1]);
        double atNut = neck + Figures.FingerboardNutMm;
        double projection =
            atNut
            + ((Figures.FingerboardJoinMm - atNut) * saddleMm / join)
            + Figures.FretHeightMm
            - domeMm;
        return new(
            stage,
            saddleGiven,
            neck,
            rise,
            load?.AtNut(moment) ?? 0,
            bow.MaxBy(Math.Abs),
            bow,
            domeMm,
            projection,
            strings,
            converged
        );
    }

    private StringHeights HeightsOf(
        int i,
        BuildStage stage,
        double domeMm,
        double nutZ,
        double saddleZ,
        double[] raised
    )
    {
        IReadOnlyList<double> frets = Geometry.FretsMm;
        double nutX = Geometry.NutMm[i];
        double saddleX = Geometry.SaddleMm[i];
        double slope = (saddleZ - nutZ) / (saddleX - nutX);
        double[] fretZ = new double[frets.Count];
        double[] action = new double[frets.Count];
        for (int k = 0; k < frets.Count; k++)
        {
            fretZ[k] = Plane(i, stage, k) + raised[k];
            action[k] = nutZ + (slope * (frets[k] - nutX)) - fretZ[k];
        }

        (double[] gap, int[] gapFret) = Gaps(action, fretZ, saddleX, saddleZ);
        double dome = domeMm * Geometry.DomeShares[i];
        double saddle = saddleZ - dome - (stage == BuildStage.Strung ? Correction(i) : 0);
        double breakAngle =
            Math.Atan2(saddle - Geometry.TieHeightMm, Geometry.TieBehindMm) + Math.Atan(slope);
        return new(
            Geometry.Strings.Strings[i].Number,
            nutZ,
            saddleZ,
            saddle,
            dome,
            fretZ,
            action,
            gap,
            gapFret,
            breakAngle
        );
    }

    // Least gap beyond each fret: the fretted string runs straight from that fret's crown to the saddle.
    private (double[] Gap, int[] Fret) Gaps(
        double[] action,
        double[] fretZ,
        double saddleX,
        double saddleZ
    )
    {
        IReadOnlyList<double> frets = Geometry.FretsMm;
        int last = frets.Count - 1;
        double[] gap = new double[last];
        int[] fret = new int[last];
        for (int k = 0; k < last; k++)
        {
            double slope = (saddleZ - fretZ[k]) / (saddleX - frets[k]);
            double least = double.PositiveInfinity;
            for (int j = k + 1; j <= last; j++)
            {
                double here =
                    k == 0 ? action[j] : fretZ[k] + (slope * (frets[j] - frets[k])) - fretZ[j];
                if (here < least)
                {
                    least = here;
                    fret[k] = j;
                }
            }

            gap[k] = least;
        }

        return (gap, fret);
    }

    private void Lines(
        BuildStage stage,
        bool saddleGiven,
        double domeMm,
        double rise,
        double riseAtAction,
        double[] nutZ,
        double[] saddleZ
    )
    {
        double neck = Figures.NeckMm(stage);
        double action = Geometry.ActionFretMm;
        for (int i = 0; i < nutZ.Length; i++)
        {
            double nutX = Geometry.NutMm[i];
            double saddleX = Geometry.SaddleMm[i];
            nutZ[i] =
                neck
                + BoardAtNut(i)
                + Figures.FretHeightMm
                + Between(i, Figures.NutBassMm, Figures.NutTrebleMm)
                + rise;
            if (saddleGiven)
            {
                saddleZ[i] =
                    (domeMm * Geometry.DomeShares[i])
                    + Between(i, Figures.SaddleBassMm!.Value, Figures.SaddleTrebleMm!.Value)
                    + (stage == BuildStage.Strung ? Correction(i) : 0);
                continue;
            }

            double at12 =
                Plane(i, stage, ChainGeometry.ActionFret)
                + riseAtAction
                - Planed(action)
                + Between(i, Figures.ActionBassMm, Figures.ActionTrebleMm);
            saddleZ[i] = nutZ[i] + ((at12 - nutZ[i]) * (saddleX - nutX) / (action - nutX));
        }
    }

    // Σ T h at the join, h over the chord of the frets, N·mm.
    private double JoinMoment(double[] nutZ, double[] saddleZ)
    {
        double sum = 0;
        for (int i = 0; i < nutZ.Length; i++)
        {
            double share =
                (Geometry.JoinMm - Geometry.NutMm[i]) / (Geometry.SaddleMm[i] - Geometry.NutMm[i]);
            double h =
                nutZ[i] + ((saddleZ[i] - nutZ[i]) * share) - BoardAtJoin(i) - Figures.FretHeightMm;
            sum += Geometry.Strings.Strings[i].TensionN * h;
        }

        return sum * Figures.TensionFactor;
    }

    // Fret plane without bow and load.
    private double Plane(int i, BuildStage stage, int fret)
    {
        double x = Geometry.FretsMm[fret];
        double join = Geometry.JoinMm;
        double nut = BoardAtNut(i);
        double atJoin = BoardAtJoin(i);
        double top =
            Geometry.FollowsKink && x > join
                ? atJoin + ((atJoin - nut) * (x - join) / join) + Geometry.BodyMm[fret]
                : Figures.NeckMm(stage) + nut + ((atJoin - Figures.NeckMm(stage) - nut) * x / join);
        return top + Figures.FretHeightMm;
    }

    // Rise under load: bending and rotation before the join; past it the frets turn down with the body.
    private double RiseAt(NeckLoad load, double xMm, double moment) =>
        (load.At(xMm, moment) + (Figures.JoinRotationRad * (Geometry.JoinMm - xMm)))
        * (1 + Figures.Creep);

    // A parabola between nut and join.
    private double Planed(double xMm)
    {
        double along = xMm / Geometry.JoinMm;
        return along is > 0 and < 1 ? 4 * Figures.BowPlanedMm * along * (1 - along) : 0;
    }

    private double BoardAtNut(int i) =>
        Figures.FingerboardNutMm + (Figures.NutTiltMm * Geometry.NutShares[i]);

    private double BoardAtJoin(int i) =>
        Figures.FingerboardJoinMm + (Figures.JoinTiltMm * Geometry.JoinShares[i]);

    private double Correction(int i) =>
        Between(i, Figures.CorrectionBassMm, Figures.CorrectionTrebleMm);

    private double Between(int i, double bass, double treble) =>
        bass + ((treble - bass) * Geometry.ShareOf(i));
}

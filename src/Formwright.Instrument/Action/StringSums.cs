namespace Formwright.Instrument.Action;

/// <summary>
/// Sums over the strings that do not change from build to build, with T the nominal tensions, r = (x_join - x_n)/(x_s - x_n) the join's share of the
/// string and p = (x_join - x_n)/(x_12 - x_n) its share of the way to fret 12.
/// </summary>
/// <param name="Total">ΣT.</param>
/// <param name="NutHeight">ΣT cn.</param>
/// <param name="NutSide">ΣT (1 - r).</param>
/// <param name="SaddleSide">ΣT r.</param>
/// <param name="Dome">ΣT r times the dome's share.</param>
/// <param name="Rest">What remains of ΣT h with the saddle as it is.</param>
/// <param name="WantedNutSide">ΣT (1 - p).</param>
/// <param name="WantedActionSide">ΣT p.</param>
/// <param name="WantedRest">What remains of ΣT h with the action wanted.</param>
internal readonly record struct StringSums(
    double Total,
    double NutHeight,
    double NutSide,
    double SaddleSide,
    double Dome,
    double Rest,
    double WantedNutSide,
    double WantedActionSide,
    double WantedRest
)
{
    public static StringSums Of(ChainFigures figures, ChainGeometry geometry, HeightChain strung)
    {
        StringSums sum = default;
        for (int i = 0; i < geometry.Count; i++)
        {
            double t = geometry.Strings.Strings[i].TensionN;
            double toJoin = geometry.JoinMm - geometry.NutMm[i];
            double r = toJoin / (geometry.SaddleMm[i] - geometry.NutMm[i]);
            double p = toJoin / (geometry.ActionFretMm - geometry.NutMm[i]);
            double share = geometry.ShareOf(i);
            double cn = figures.NutBassMm + (share * (figures.NutTrebleMm - figures.NutBassMm));
            double wanted =
                figures.ActionBassMm + (share * (figures.ActionTrebleMm - figures.ActionBassMm));
            double saddle =
                strung.Strings[i].SaddleTopMm - (strung.DomeMm * geometry.DomeShares[i]);
            (double nutTilt, double actionTilt) = TiltOf(figures, geometry, i);
            double joinTilt = figures.JoinTiltMm * geometry.JoinShares[i];
            sum = new(
                sum.Total + t,
                sum.NutHeight + (t * cn),
                sum.NutSide + (t * (1 - r)),
                sum.SaddleSide + (t * r),
                sum.Dome + (t * r * geometry.DomeShares[i]),
                sum.Rest + (t * (((1 - r) * (nutTilt + cn)) + (r * saddle) - joinTilt)),
                sum.WantedNutSide + (t * (1 - p)),
                sum.WantedActionSide + (t * p),
                sum.WantedRest
                    + (t * (((1 - p) * (nutTilt + cn)) + (p * (actionTilt + wanted)) - joinTilt))
            );
        }

        return sum;
    }

    /// <summary>What is a string's own: its tilt, its place on nut and saddle.</summary>
    public static (double Nut, double Action) TiltOf(
        ChainFigures figures,
        ChainGeometry geometry,
        int i
    )
    {
        double along = geometry.ActionFretMm / geometry.JoinMm;
        double nut = figures.NutTiltMm * geometry.NutShares[i];
        double join = figures.JoinTiltMm * geometry.JoinShares[i];
        return (nut, (nut * (1 - along)) + (join * along));
    }
}

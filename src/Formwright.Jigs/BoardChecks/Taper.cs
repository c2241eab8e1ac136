using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.BoardChecks;

/// <summary>Something that is thickest at the nut and tapers to nothing at the join, along the bass and the treble edge of the neck: a shim, or wood to plane off.</summary>
/// <param name="NutBassMm">Thickness at the nut, bass side, mm.</param>
/// <param name="NutTrebleMm">Thickness at the nut, treble side, mm.</param>
/// <param name="JoinMm">Where it has come to nothing, from the nut, mm.</param>
/// <param name="Rows">Thickness at nut and frets.</param>
public sealed record Taper(
    double NutBassMm,
    double NutTrebleMm,
    double JoinMm,
    IReadOnlyList<TaperRow> Rows
)
{
    /// <summary>Thickest place, mm.</summary>
    public double MostMm => Math.Max(NutBassMm, NutTrebleMm);

    internal static Taper? Of(
        double nutBassMm,
        double nutTrebleMm,
        double joinMm,
        IEnumerable<GapRow> neck
    )
    {
        double bass = Math.Max(0, nutBassMm);
        double treble = Math.Max(0, nutTrebleMm);
        return Math.Max(bass, treble) < GapTolerance.LeastMm / 2
            ? null
            : new Taper(
                bass,
                treble,
                joinMm,
                [
                    .. neck.Select(row =>
                    {
                        double share = (joinMm - row.XMm) / joinMm;
                        return new TaperRow(row.Place, row.XMm, bass * share, treble * share);
                    }),
                ]
            );
    }
}

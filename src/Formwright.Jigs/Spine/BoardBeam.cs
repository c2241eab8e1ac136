using Formwright.Instrument;

namespace Formwright.Jigs.Spine;

/// <summary>
/// The board as a beam along its centreline, in short pieces of its true width: neck part, body, and the end that no spine stiffens. The hollow of
/// the relief and the wide shoulders before the join are left out.
/// </summary>
internal sealed class BoardBeam
{
    private const double StepMm = 4;

    private readonly (double X, double Length, double Width)[] pieces;
    private readonly double joinMm;
    private readonly double tailMm;

    public BoardBeam(Guitar guitar, double spineEndMm)
    {
        joinMm = guitar.JoinMm;
        tailMm = guitar.TailMm;
        SpineEndMm = Math.Clamp(spineEndMm, 0, tailMm);
        double[] cuts = [.. new[] { 0, joinMm, SpineEndMm, tailMm }.Distinct().Order()];
        pieces =
        [
            .. cuts.Zip(cuts.Skip(1)).SelectMany(run => Pieces(guitar, run.First, run.Second)),
        ];
    }

    public double SpineEndMm { get; }

    /// <summary>
    /// What the straight edge at tail and join reads at the nut: a piece of curvature κ under the neck lowers the nut by κ x dx, one under the body by
    /// κ (tail - x) dx x_join/body. With one curvature all along the sum is κ x_join (x_join + body)/2.
    /// </summary>
    public double DropMm(Func<double, bool, BoardSection> section) =>
        pieces.Sum(piece =>
        {
            double arm =
                piece.X < joinMm ? piece.X : (tailMm - piece.X) * joinMm / (tailMm - joinMm);
            return At(section, piece).CurvaturePerMm * arm * piece.Length;
        });

    /// <summary>Sag in the middle between two supports under a load there, mm: ∫ M m / E I (unit load).</summary>
    public double SagMm(
        Func<double, bool, BoardSection> section,
        double from,
        double to,
        double n
    ) =>
        pieces
            .Where(piece => piece.X > from && piece.X < to)
            .Sum(piece =>
            {
                double arm = Math.Min(piece.X - from, to - piece.X) / 2;
                return n * arm * arm / At(section, piece).StiffnessNmm2 * piece.Length;
            });

    /// <summary>Sag of the tail under a load there, beyond the second support, mm.</summary>
    public double TailSagMm(
        Func<double, bool, BoardSection> section,
        double from,
        double to,
        double n
    ) =>
        pieces
            .Where(piece => piece.X > from)
            .Sum(piece =>
            {
                double arm =
                    piece.X < to
                        ? (tailMm - to) * (piece.X - from) / (to - from)
                        : tailMm - piece.X;
                return n * arm * arm / At(section, piece).StiffnessNmm2 * piece.Length;
            });

    private BoardSection At(
        Func<double, bool, BoardSection> section,
        (double X, double Length, double Width) piece
    ) => section(piece.Width, piece.X < SpineEndMm);

    private static IEnumerable<(double X, double Length, double Width)> Pieces(
        Guitar guitar,
        double from,
        double to
    )
    {
        int count = Math.Max(1, (int)Math.Ceiling((to - from) / StepMm));
        double length = (to - from) / count;
        for (int i = 0; i < count; i++)
        {
            double x = from + ((i + 0.5) * length);
            double neck = guitar.Design.Workboard.NeckWidthMm;
            double width =
                x < guitar.JoinMm
                    ? neck
                    : Math.Max(
                        neck,
                        guitar.Outline.WidthAt(x - guitar.JoinMm)
                            + (2 * guitar.Design.Workboard.MarginMm)
                    );
            yield return (x, length, width);
        }
    }
}

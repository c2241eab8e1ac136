using Formwright.Design.Sections;

namespace Formwright.Instrument.Strings;

/// <summary>
/// Nut and saddle set for intonation: least squares of the cents errors over all frets (Gauss-Newton with exact slopes). No worked table of
/// compensations was found in print; checked are the limits (no stiffness and no stretch need none), symmetry and order of magnitude.
/// </summary>
/// <param name="None">Nut and saddle at the bare scale.</param>
/// <param name="Straight">A straight saddle at the best set-back and angle.</param>
/// <param name="PerString">Each string its own saddle place.</param>
/// <param name="NutAndSaddle">Each string its own nut and saddle place.</param>
public sealed record Intonation(
    IntonationPlan None,
    IntonationPlan Straight,
    IntonationPlan PerString,
    IntonationPlan NutAndSaddle
)
{
    private const int MaxSteps = 20;
    private const double StepMm = 1e-9;

    /// <summary>The plan that a design asks for.</summary>
    public IntonationPlan Of(SaddleCompensation way) =>
        way switch
        {
            SaddleCompensation.None => None,
            SaddleCompensation.Straight => Straight,
            SaddleCompensation.PerString => PerString,
            _ => NutAndSaddle,
        };

    /// <summary>All ways.</summary>
    /// <param name="strings">The strings with their heights, bass to treble.</param>
    /// <param name="fretsMm">Places of nut (entry 0) and frets, mm.</param>
    public static Intonation Of(
        IReadOnlyList<FrettedString> strings,
        IReadOnlyList<double> fretsMm
    ) =>
        new(
            PlanFor(SaddleCompensation.None, strings, fretsMm),
            PlanFor(SaddleCompensation.Straight, strings, fretsMm),
            PlanFor(SaddleCompensation.PerString, strings, fretsMm),
            PlanFor(SaddleCompensation.NutAndSaddle, strings, fretsMm)
        );

    /// <summary>One way only, for when a slider moves.</summary>
    public static IntonationPlan PlanFor(
        SaddleCompensation way,
        IReadOnlyList<FrettedString> strings,
        IReadOnlyList<double> fretsMm
    )
    {
        ArgumentNullException.ThrowIfNull(strings);
        ArgumentNullException.ThrowIfNull(fretsMm);
        return way switch
        {
            SaddleCompensation.None => PlanOf(
                strings,
                fretsMm,
                new (double, double)[strings.Count],
                true
            ),
            SaddleCompensation.Straight => FitStraight(strings, fretsMm),
            _ => FitEach(strings, fretsMm, way == SaddleCompensation.NutAndSaddle),
        };
    }

    private static IntonationPlan FitEach(
        IReadOnlyList<FrettedString> strings,
        IReadOnlyList<double> fretsMm,
        bool withNut
    )
    {
        (double Nut, double Saddle)[] places = new (double, double)[strings.Count];
        bool converged = true;
        for (int i = 0; i < places.Length; i++)
        {
            (double nut, double saddle) = (0, 0);
            bool settled = false;
            for (int step = 0; step < MaxSteps && !settled; step++)
            {
                double nn = 0,
                    ns = 0,
                    ss = 0,
                    rn = 0,
                    rs = 0;
                for (int k = 1; k < fretsMm.Count; k++)
                {
                    (double r, double n, double s) = strings[i]
                        .Evaluate(fretsMm[k], k, nut, saddle);
                    nn += n * n;
                    ns += n * s;
                    ss += s * s;
                    rn += r * n;
                    rs += r * s;
                }

                double det = (nn * ss) - (ns * ns);
                double moveNut = withNut ? ((ns * rs) - (ss * rn)) / det : 0;
                double moveSaddle = withNut ? ((ns * rn) - (nn * rs)) / det : -rs / ss;
                nut += moveNut;
                saddle += moveSaddle;
                settled = Math.Abs(moveNut) + Math.Abs(moveSaddle) < StepMm;
            }

            converged &= settled;
            places[i] = (nut, saddle);
        }

        return PlanOf(strings, fretsMm, places, converged);
    }

    // Saddle place of each string: set-back + slope · y.
    private static IntonationPlan FitStraight(
        IReadOnlyList<FrettedString> strings,
        IReadOnlyList<double> fretsMm
    )
    {
        (double back, double slope) = (0, 0);
        bool settled = false;
        for (int step = 0; step < MaxSteps && !settled; step++)
        {
            double aa = 0,
                ab = 0,
                bb = 0,
                ra = 0,
                rb = 0;
            foreach (FrettedString each in strings)
            {
                double y = each.Wire.SaddleYMm;
                for (int k = 1; k < fretsMm.Count; k++)
                {
                    (double r, _, double s) = each.Evaluate(fretsMm[k], k, 0, back + (slope * y));
                    aa += s * s;
                    ab += s * s * y;
                    bb += s * s * y * y;
                    ra += r * s;
                    rb += r * s * y;
                }
            }

            double det = (aa * bb) - (ab * ab);
            double moveBack = ((ab * rb) - (bb * ra)) / det;
            double moveSlope = ((ab * ra) - (aa * rb)) / det;
            back += moveBack;
            slope += moveSlope;
            settled = Math.Abs(moveBack) + (50 * Math.Abs(moveSlope)) < StepMm;
        }

        (double, double)[] places =
        [
            .. strings.Select(each => (0.0, back + (slope * each.Wire.SaddleYMm))),
        ];
        return PlanOf(strings, fretsMm, places, settled) with
        {
            SaddleSetBackMm = back,
            SaddleSlope = slope,
        };
    }

    private static IntonationPlan PlanOf(
        IReadOnlyList<FrettedString> strings,
        IReadOnlyList<double> fretsMm,
        (double Nut, double Saddle)[] places,
        bool converged
    )
    {
        StringIntonation[] each = new StringIntonation[strings.Count];
        for (int i = 0; i < each.Length; i++)
        {
            double[] cents = new double[fretsMm.Count];
            for (int k = 1; k < cents.Length; k++)
            {
                cents[k] = strings[i].Cents(fretsMm[k], k, places[i].Nut, places[i].Saddle);
            }

            each[i] = new(strings[i].Wire.Number, places[i].Nut, places[i].Saddle, cents);
        }

        (double back, double slope) = LineThrough(strings, places);
        return new(each, back, slope, converged);
    }

    private static (double Back, double Slope) LineThrough(
        IReadOnlyList<FrettedString> strings,
        (double Nut, double Saddle)[] places
    )
    {
        double n = places.Length;
        double y = 0,
            s = 0,
            yy = 0,
            ys = 0;
        for (int i = 0; i < places.Length; i++)
        {
            double at = strings[i].Wire.SaddleYMm;
            y += at;
            s += places[i].Saddle;
            yy += at * at;
            ys += at * places[i].Saddle;
        }

        double slope = ((n * ys) - (y * s)) / ((n * yy) - (y * y));
        return ((s - (slope * y)) / n, slope);
    }
}

using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>The bends of a rib: between the places where the outline's curvature changes sign.</summary>
internal static class RibBends
{
    // Flatter than a radius of 3 m counts as straight where a bend starts (our choice).
    private const double StraightPerMm = 1 / 3000.0;

    /// <summary>Arc lengths, from the heel, where the outline's curvature changes sign. κ is linear on each segment: exact.</summary>
    internal static IEnumerable<double> Straights(Outline outline)
    {
        Chain half = outline.Half;
        double before = 0;
        for (int i = 0; i < half.Segments.Length; i++)
        {
            EulerSegment segment = half.Segments[i];
            double a = segment.StartCurvature;
            double b = segment.EndCurvature;
            if (a * b < 0)
            {
                yield return half.StartOf(i) + (segment.LengthMm * a / (a - b));
            }
            else if (a == 0 && before * b < 0)
            {
                yield return half.StartOf(i);
            }

            before = b == 0 ? before : b;
        }
    }

    internal static IEnumerable<RibBend> Of(
        Outline outline,
        RibGeometry rib,
        double heel,
        double tail,
        double end,
        RibsDesign ribs
    )
    {
        double[] cuts = [heel, .. Straights(outline).Where(s => s > heel && s < tail), tail];
        for (int i = cuts.Length - 2; i >= 0; i--)
        {
            if (Bend(outline, rib, cuts[i], cuts[i + 1], end, ribs) is { } bend)
            {
                yield return bend;
            }
        }
    }

    private static RibBend? Bend(
        Outline outline,
        RibGeometry rib,
        double from,
        double to,
        double end,
        RibsDesign ribs
    )
    {
        Chain half = outline.Half;
        // κ is monotone between joints, so its extremes are at joints and ends; the bend proper starts where it is no longer flat.
        double[] joints =
        [
            from,
            .. Enumerable
                .Range(0, half.Segments.Length)
                .Select(half.StartOf)
                .Where(s => s > from && s < to),
            to,
        ];
        double tightest = joints.MaxBy(s => Math.Abs(half.At(s).Curvature));
        double kappa = -half.At(tightest).Curvature;
        if (Math.Abs(kappa) <= StraightPerMm)
        {
            return null;
        }

        double t = ribs.ThicknessMm;
        bool isWaist = kappa < 0;
        double outer = 1 / Math.Abs(kappa);
        // Outline is the outer face: at mid-thickness a bout is tighter by t/2, a waist wider.
        double middle = isWaist ? outer + (t / 2) : outer - (t / 2);
        double limit = ribs.BendStrainPercent / 100;
        // t/2R = limit with R = outer ∓ t/2.
        double bends = 2 * limit * outer / (isWaist ? 1 - limit : 1 + limit);
        // The form bears on the hollow side of the bend: inside a bout, outside at the waist.
        double face = isWaist ? outer : outer - t;
        double a = Flat(half, from, tightest);
        double b = Flat(half, to, tightest);
        double turn = Math.Abs(half.At(b).Angle - half.At(a).Angle);
        return new RibBend(
            rib.At(b).AlongMm - end,
            rib.At(a).AlongMm - end,
            isWaist,
            middle,
            rib.At(tightest).AlongMm - end,
            turn * 180 / Math.PI,
            100 * t / (2 * middle),
            face / (1 + (ribs.SpringBackPercent / 100)),
            bends
        );
    }

    // Where, coming from an end, the curvature first passes the limit of straightness.
    private static double Flat(Chain half, double end, double tightest)
    {
        if (Math.Abs(half.At(end).Curvature) >= StraightPerMm)
        {
            return end;
        }

        double low = end;
        double high = tightest;
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            (low, high) =
                Math.Abs(half.At(middle).Curvature) < StraightPerMm
                    ? (middle, high)
                    : (low, middle);
        }

        return (low + high) / 2;
    }
}

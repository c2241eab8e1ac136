using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Instrument.Body.Back;
using Formwright.Jigs.Mould;

namespace Formwright.Jigs.MouldFits;

/// <summary>
/// An existing mould held against another design. The mould is given as a design of its own: its inner face as an outline, its layers, rebate and
/// fasteners as they are. It is slid along the centreline to where the largest distance between its inner face and the new outline is least.
/// </summary>
/// <param name="Verdict">Fits, fits with changes, or does not.</param>
/// <param name="ShiftMm">How far the mould's heel lies from the new outline's heel, towards the tail positive, mm.</param>
/// <param name="ProudMm">How far the mould reaches into the outline, at most, mm.</param>
/// <param name="OffMm">How far it stands off, at most, mm.</param>
/// <param name="Stretches">Where it does either by more than it may, from heel to tail.</param>
/// <param name="Changes">What to change, and what can't be.</param>
/// <param name="Fasteners">Its dowels and bolts on the new board.</param>
public sealed record MouldFit(
    MouldVerdict Verdict,
    double ShiftMm,
    double ProudMm,
    double OffMm,
    IReadOnlyList<FitStretch> Stretches,
    IReadOnlyList<MouldChange> Changes,
    IReadOnlyList<Fastener> Fasteners
)
{
    /// <summary>Distance between mould and ribs that clamping takes up, mm: common practice.</summary>
    public const double CloseMm = 0.3;

    /// <summary>Thickest lining of cork or leather between mould and ribs, mm: common practice.</summary>
    public const double LiningMm = 3;

    /// <summary>How far under the lowest ribs a mould must end, for clamps and linings, mm: common practice.</summary>
    public const double UnderRibsMm = 10;

    private const int Samples = 240;
    private const double SlideMm = 60;

    /// <summary>Holds a mould against a design.</summary>
    /// <param name="guitar">The instrument to be built.</param>
    /// <param name="mould">The instrument that the mould was made for, or the mould as measured.</param>
    public static MouldFit Of(Guitar guitar, Guitar mould)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(mould);
        MouldDesign design = mould.Design.Mould;
        Chain face = mould.Outline.Half;
        Point[] outline = Held(guitar, design);
        double guess = guitar.Design.Outline.Waist.AtMm - mould.Design.Outline.Waist.AtMm;
        double shift = Best(outline, face, guess - SlideMm, guess + SlideMm);
        double[] proud = [.. Distances(outline, face, shift)];
        FitStretch[] stretches = [.. Stretch(outline, proud)];
        double most = Math.Max(0, proud.Max());
        double off = Math.Max(0, -proud.Min());
        MouldPlan plan = MouldMaker.Of(mould);
        MouldChange[] changes = [.. ChangesFor(guitar, mould, plan, most, off)];
        MouldVerdict verdict =
            changes.Length == 0 ? MouldVerdict.Fits
            : changes.All(change => change.IsPossible) ? MouldVerdict.FitsWithChanges
            : MouldVerdict.DoesNotFit;
        double move = guitar.JoinMm + shift - mould.JoinMm;
        return new MouldFit(
            verdict,
            shift,
            most,
            off,
            stretches,
            changes,
            [
                .. plan.Fasteners.Select(each =>
                    each with
                    {
                        Centre = new Point(each.Centre.X + move, each.Centre.Y),
                    }
                ),
            ]
        );
    }

    // The outline's places that the mould has a wall for: outside the cut ends.
    private static Point[] Held(Guitar guitar, MouldDesign design)
    {
        OutlineOffsets offsets = new(guitar.Outline, 0, 0.01);
        double from = offsets.ArcLengthAtHeel(0, design.HeelCutMm) ?? 0;
        double to = offsets.ArcLengthAtTail(0, design.TailCutMm) ?? guitar.Outline.HalfPerimeterMm;
        return
        [
            .. Enumerable
                .Range(0, Samples + 1)
                .Select(i => guitar.Outline.Half.At(from + ((to - from) * i / Samples)).Position),
        ];
    }

    // Positive where the outline lies outside the mould's inner face (left of the half): there the mould is proud.
    private static IEnumerable<double> Distances(Point[] outline, Chain face, double shift) =>
        outline.Select(place => face.Nearest(new Point(place.X - shift, place.Y)).SignedDistanceMm);

    // The largest distance has one valley over the slide of like shapes; a coarse scan finds it, golden section sharpens it.
    private static double Best(Point[] outline, Chain face, double from, double to)
    {
        Point[] coarse = [.. outline.Where((_, i) => i % 6 == 0)];
        double step = (to - from) / 24;
        double best = Enumerable
            .Range(0, 25)
            .Select(i => from + (i * step))
            .MinBy(shift => Largest(coarse, face, shift));
        double low = best - step;
        double high = best + step;
        double golden = (Math.Sqrt(5) - 1) / 2;
        for (int i = 0; i < 26; i++)
        {
            double a = high - (golden * (high - low));
            double b = low + (golden * (high - low));
            bool isLeft = Largest(outline, face, a) < Largest(outline, face, b);
            (low, high) = isLeft ? (low, b) : (a, high);
        }

        return (low + high) / 2;
    }

    private static double Largest(Point[] outline, Chain face, double shift) =>
        Distances(outline, face, shift).Max(Math.Abs);

    private static IEnumerable<FitStretch> Stretch(Point[] outline, double[] proud)
    {
        int start = -1;
        for (int i = 0; i <= proud.Length; i++)
        {
            int sign = i < proud.Length ? Side(proud[i]) : 0;
            if (start >= 0 && sign != Side(proud[start]))
            {
                int most = Enumerable.Range(start, i - start).MaxBy(k => Math.Abs(proud[k]));
                yield return new FitStretch(
                    proud[start] > 0,
                    outline[start].X,
                    outline[i - 1].X,
                    Math.Abs(proud[most]),
                    outline[most].X
                );
                start = -1;
            }

            if (start < 0 && sign != 0)
            {
                start = i;
            }
        }

        static int Side(double distance) =>
            distance > CloseMm ? 1
            : distance < -CloseMm ? -1
            : 0;
    }

    private static IEnumerable<MouldChange> ChangesFor(
        Guitar guitar,
        Guitar mould,
        MouldPlan plan,
        double proud,
        double off
    )
    {
        InstrumentDesign design = guitar.Design;
        MouldDesign old = mould.Design.Mould;
        double spare =
            plan.Fasteners.Count == 0
                ? old.WallMm - old.Rebate.WidthMm
                : Math.Max(
                    0,
                    plan.Fasteners.Min(each =>
                        each.EdgeDistanceMm - (MouldRules.EdgeDiameters * each.DiameterMm)
                    )
                );
        if (proud > CloseMm)
        {
            yield return new MouldChange("take-wood", proud, spare);
        }

        if (off > CloseMm)
        {
            yield return new MouldChange("line", off, LiningMm);
        }

        double wider = design.Soundboard.OverhangMm - old.Rebate.WidthMm;
        if (wider > 0)
        {
            yield return new MouldChange("widen-rebate", wider, spare);
        }

        double deep = old.Rebate.DepthMm - design.Soundboard.EdgeThicknessMm;
        if (deep > 0)
        {
            yield return new MouldChange(
                "plane-foot",
                deep,
                Math.Max(0, old.LayersMm[0] - old.Rebate.DepthMm - MouldRules.LeastLayerMm)
            );
        }

        double neck = Math.Max(design.Neck.WidthJoinMm, design.Heel.WidthMm) / 2;
        if (neck > old.HeelCutMm)
        {
            yield return new MouldChange(
                "cut-heel",
                neck - old.HeelCutMm,
                HeelRoom(plan, old.HeelCutMm)
            );
        }

        double high = plan.HeightMm + UnderRibsMm - LowestRibMm(guitar);
        if (high > 0)
        {
            yield return new MouldChange(
                "lower",
                high,
                old.LayersMm.Count > 1 ? old.LayersMm[^1] : 0
            );
        }
    }

    // How far the heel end may be cut back before its nearest hole is too near to it.
    private static double HeelRoom(MouldPlan plan, double cutMm)
    {
        Fastener[] bass = [.. plan.Fasteners.Where(each => each.Centre.Y > 0)];
        if (bass.Length == 0)
        {
            return double.PositiveInfinity;
        }

        Fastener end = bass[0];
        return Math.Max(0, end.Centre.Y - cutMm - (MouldRules.EdgeDiameters * end.DiameterMm));
    }

    private static double LowestRibMm(Guitar guitar)
    {
        BackField depth = new(
            guitar.Design.Back,
            guitar.Outline.BodyLengthMm,
            guitar.Dome.Field.Region
        );
        Chain half = guitar.Outline.Half;
        return Enumerable
            .Range(0, Samples + 1)
            .Min(i => depth.HeightAt(half.At(half.LengthMm * i / Samples).Position));
    }
}

using Formwright.Curves;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Jigs.Workboard;
using Place = Formwright.Findings.Place;

namespace Formwright.Jigs.BoardChecks;

/// <summary>
/// A workboard as the straight edge found it: what is wrong, what to do about it, and what saddle and action become if it is left.
/// The ramp is the gap at the nut; where none was taken there, the straight line through the join that fits the gaps at the frets best.
/// A hump or a hollow is what leaves that line.
/// </summary>
/// <param name="Rows">Every measured place, nut first.</param>
/// <param name="RampMm">The ramp that is wanted, mm.</param>
/// <param name="RampToleranceMm">How far it may be off, mm.</param>
/// <param name="RampBassMm">The ramp found at the bass edge of the neck, mm; null where nothing was measured on the neck.</param>
/// <param name="RampTrebleMm">The ramp found at the treble edge, mm.</param>
/// <param name="Shim">Shim under the neck, for what is too large; null where none is needed.</param>
/// <param name="Plane">What to plane off the ramp, for what is too small; null where nothing is.</param>
/// <param name="BodyWedgeMm">Instead of planing: thickness at the join of a wedge under the body, mm; null where it does not help.</param>
/// <param name="Left">If it is left as it is; null where nothing was measured on the neck.</param>
/// <param name="Findings">What is wrong.</param>
public sealed record BoardCheck(
    IReadOnlyList<CheckedGap> Rows,
    double RampMm,
    double RampToleranceMm,
    double? RampBassMm,
    double? RampTrebleMm,
    Taper? Shim,
    Taper? Plane,
    double? BodyWedgeMm,
    LeftAsIs? Left,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Whether the board may be used as it is.</summary>
    public bool Passes => Findings.All(finding => finding.Severity != Severity.Stop);

    /// <summary>Checks a board.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="plan">Its workboard.</param>
    /// <param name="chain">Its height chain.</param>
    /// <param name="measured">What was found, places of the plan's gap table.</param>
    public static BoardCheck Of(
        Guitar guitar,
        WorkboardPlan plan,
        ChainModel chain,
        IReadOnlyList<MeasuredGap> measured
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(measured);
        CheckedGap[] rows =
        [
            .. plan.GapTable.SelectMany(row =>
                measured
                    .Where(gap => gap.Place == row.Place)
                    .Select(gap => new CheckedGap(row, gap, IsWithin(row, gap)))
            ),
        ];
        double join = guitar.JoinMm;
        CheckedGap[] neck = [.. rows.Where(row => row.Row.XMm < join)];
        double? bass = Ramp(neck, join, gap => gap.BassMm);
        double? treble = Ramp(neck, join, gap => gap.TrebleMm);
        double tolerance = guitar.Design.Workboard.RampToleranceMm;
        Finding[] findings =
        [
            .. bass is { } b && treble is { } t
                ? OnNeck(neck, join, plan.RampMm, tolerance, b, t)
                : [],
            .. UnderBody(rows, guitar),
        ];
        BoardCheck check = new(
            rows,
            plan.RampMm,
            tolerance,
            bass,
            treble,
            null,
            null,
            null,
            bass is { } left && treble is { } right ? LeftAsIs.Of(chain, left, right) : null,
            findings
        );
        return bass is { } one && treble is { } other && findings.Any(IsOfRamp)
            ? check.WithCure(guitar, plan, one - plan.RampMm, other - plan.RampMm)
            : check;
    }

    private BoardCheck WithCure(Guitar guitar, WorkboardPlan plan, double bass, double treble)
    {
        GapRow[] neck = [.. plan.GapTable.Where(row => row.XMm < guitar.JoinMm)];
        bool twisted = Findings.Any(finding => finding.Rule == BoardCheckRules.Twist);
        double mean = (bass + treble) / 2;
        // The join raised by w turns the datum about the tail; the neck then runs from the raised join to the ramp's end at the nut.
        double body = guitar.Outline.BodyLengthMm;
        double? wedge = mean < 0 && !twisted ? -mean * body / (guitar.JoinMm + body) : null;
        return this with
        {
            Shim = Taper.Of(bass, treble, guitar.JoinMm, neck),
            Plane = Taper.Of(-bass, -treble, guitar.JoinMm, neck),
            BodyWedgeMm = wedge,
        };
    }

    private static bool IsWithin(GapRow row, MeasuredGap gap) =>
        Math.Abs(gap.BassMm - row.GapMm) <= row.ToleranceMm
        && Math.Abs(gap.TrebleMm - row.GapMm) <= row.ToleranceMm;

    private static bool IsOfRamp(Finding finding) =>
        finding.Rule == BoardCheckRules.RampTooLarge
        || finding.Rule == BoardCheckRules.RampTooSmall
        || finding.Rule == BoardCheckRules.Twist;

    private static double? Ramp(CheckedGap[] neck, double join, Func<MeasuredGap, double> side)
    {
        if (neck.FirstOrDefault(row => row.Row.XMm == 0) is { } nut)
        {
            return side(nut.Found);
        }

        double of = 0;
        double over = 0;
        foreach (CheckedGap row in neck)
        {
            double share = (join - row.Row.XMm) / join;
            of += side(row.Found) * share;
            over += share * share;
        }

        return over > 0 ? of / over : null;
    }

    private static IEnumerable<Finding> OnNeck(
        CheckedGap[] neck,
        double join,
        double ramp,
        double tolerance,
        double bass,
        double treble
    )
    {
        double worst = Math.Abs(bass - ramp) > Math.Abs(treble - ramp) ? bass : treble;
        if (Math.Abs(worst - ramp) > tolerance)
        {
            Rule rule = worst > ramp ? BoardCheckRules.RampTooLarge : BoardCheckRules.RampTooSmall;
            yield return rule.Broken(worst, ramp, "neck.ramp", new Place(0, 0), tolerance);
        }

        CheckedGap? twisted = neck.Where(row => row.Found.IsSided)
            .OrderByDescending(row => Math.Abs(row.Found.BassMm - row.Found.TrebleMm))
            .FirstOrDefault(row =>
                Math.Abs(row.Found.BassMm - row.Found.TrebleMm) > row.Row.ToleranceMm
            );
        if (twisted is not null)
        {
            double apart = twisted.Found.BassMm - twisted.Found.TrebleMm;
            yield return BoardCheckRules.Twist.Broken(
                Math.Abs(apart),
                twisted.Row.ToleranceMm,
                "neck.ramp",
                new Place(twisted.Row.XMm, 0),
                twisted.Row.PlaceName,
                JigsWords.Of[apart > 0 ? "mark.bass" : "mark.treble"]
            );
        }
        else if (neck.All(row => !row.Found.IsSided))
        {
            yield return BoardCheckRules.OneSideOnly.Broken(0, 0, "neck.ramp");
        }

        foreach (CheckedGap row in neck.Where(row => row.Row.XMm > 0))
        {
            double share = (join - row.Row.XMm) / join;
            double proudBass = (bass * share) - row.Found.BassMm;
            double proudTreble = (treble * share) - row.Found.TrebleMm;
            double proud = Math.Abs(proudBass) > Math.Abs(proudTreble) ? proudBass : proudTreble;
            if (Math.Abs(proud) > row.Row.ToleranceMm)
            {
                Rule rule = proud > 0 ? BoardCheckRules.Hump : BoardCheckRules.Hollow;
                yield return rule.Broken(
                    Math.Abs(proud),
                    row.Row.ToleranceMm,
                    "neck.ramp",
                    new Place(row.Row.XMm, 0),
                    row.Row.PlaceName
                );
            }
        }
    }

    private static IEnumerable<Finding> UnderBody(CheckedGap[] rows, Guitar guitar)
    {
        foreach (CheckedGap row in rows.Where(row => row.Row.XMm > guitar.JoinMm))
        {
            double found = Math.Min(row.Found.BassMm, row.Found.TrebleMm);
            double dome = guitar.Dome.Field.HeightAt(new Point(row.Row.XMm - guitar.JoinMm, 0));
            if (found < dome)
            {
                yield return BoardCheckRules.ReliefShallow.Broken(
                    found,
                    dome,
                    "workboard.clearance",
                    new Place(row.Row.XMm, 0),
                    row.Row.PlaceName
                );
            }
        }
    }
}

using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Action;

/// <summary>The rules of neck and action.</summary>
public static class ActionRules
{
    private const double RadToDeg = 180 / Math.PI;

    // Chance below which the maker is told (tuned).
    private const double PoorChance = 0.8;

    // Bow that differs by less is not worth planing, mm (tuned).
    private const double BowMm = 0.1;

    // Errors that players hear, cents (common practice, from memory).
    private const double HeardCents = 6;

    public static readonly Rule OutsideBand = Of("action.outside-band", Severity.Warn, "mm");
    public static readonly Rule SaddleTooLow = Of("action.saddle-too-low", Severity.Warn, "mm");
    public static readonly Rule SaddleTooHigh = Of("action.saddle-too-high", Severity.Warn, "mm");
    public static readonly Rule Buzz = Of("action.buzz", Severity.Stop, "mm");
    public static readonly Rule SmallGap = Of("action.small-gap", Severity.Warn, "mm");
    public static readonly Rule BreakAngleSmall = Of(
        "action.break-angle-small",
        Severity.Warn,
        "°"
    );
    public static readonly Rule BreakAngleLarge = Of(
        "action.break-angle-large",
        Severity.Warn,
        "°"
    );
    public static readonly Rule StringNearEdge = Of("action.string-near-edge", Severity.Warn, "mm");
    public static readonly Rule RampBeyondBoard = Of(
        "action.ramp-beyond-board",
        Severity.Stop,
        "mm"
    );
    public static readonly Rule RampBelowDatum = Of("action.ramp-below-datum", Severity.Warn, "mm");
    public static readonly Rule DomeBeyondBoard = Of(
        "action.dome-beyond-board",
        Severity.Stop,
        "mm"
    );
    public static readonly Rule TensionHigh = Of("action.tension-high", Severity.Warn, "N");
    public static readonly Rule TensionLow = Of("action.tension-low", Severity.Warn, "N");
    public static readonly Rule Kink = Of("action.kink", Severity.Note, "mm");
    public static readonly Rule FingerboardThin = Of(
        "action.fingerboard-thin",
        Severity.Warn,
        "mm"
    );
    public static readonly Rule FretPastEnd = Of("action.fret-past-end", Severity.Warn, "mm");
    public static readonly Rule Bow = Of("action.bow", Severity.Note, "mm");
    public static readonly Rule SaddleThin = Of("action.saddle-thin", Severity.Note, "mm");
    public static readonly Rule Intonation = Of("action.intonation", Severity.Note, "cents");
    public static readonly Rule PoorOdds = Of("action.poor-odds", Severity.Note, "%");
    public static readonly Rule MeasuredOff = Of("action.measured-off", Severity.Warn, "mm");
    public static readonly Rule NotSettled = Of("action.not-settled", Severity.Stop, "");

    /// <summary>What a result breaks.</summary>
    public static IEnumerable<Finding> Of(InstrumentDesign design, NeckAndAction result)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(result);
        return
        [
            .. Heights(design, result),
            .. Gaps(design, result),
            .. Angles(design, result),
            .. Wood(design, result),
            .. Odds(design, result),
        ];
    }

    private static IEnumerable<Finding> Heights(InstrumentDesign design, NeckAndAction result)
    {
        HeightChain strung = result.Strung;
        (StringHeights String, double Wanted, string Key)[] ends =
        [
            (strung.Bass, result.Model.Figures.ActionBassMm, "action.bass"),
            (strung.Treble, result.Model.Figures.ActionTrebleMm, "action.treble"),
        ];
        foreach ((StringHeights each, double wanted, string key) in ends)
        {
            double miss = each.Action12Mm - wanted;
            if (Math.Abs(miss) > design.Action.BandMm)
            {
                double perMm =
                    result.Model.Geometry.SaddleMm[0] / result.Model.Geometry.ActionFretMm;
                yield return OutsideBand.Broken(
                    each.Action12Mm,
                    wanted,
                    key,
                    At(result, each.Number, result.Model.Geometry.ActionFretMm),
                    each.Number,
                    -miss * perMm,
                    design.Action.BandMm
                );
            }
        }

        // Each way once: the string that is furthest out.
        StringHeights lowest = strung.Strings.MinBy(each => each.SaddleMm)!;
        StringHeights highest = strung.Strings.MaxBy(each => each.SaddleMm)!;
        if (lowest.SaddleMm < design.Saddle.LeastMm)
        {
            yield return SaddleTooLow.Broken(
                lowest.SaddleMm,
                design.Saddle.LeastMm,
                "saddle.height",
                At(result, lowest.Number, double.PositiveInfinity),
                lowest.Number,
                design.Saddle.LeastMm - lowest.SaddleMm
            );
        }

        if (highest.SaddleMm > design.Saddle.MostMm)
        {
            yield return SaddleTooHigh.Broken(
                highest.SaddleMm,
                design.Saddle.MostMm,
                "saddle.height",
                At(result, highest.Number, double.PositiveInfinity),
                highest.Number,
                highest.SaddleMm - design.Saddle.MostMm
            );
        }

        if (!strung.Converged || !result.Compensation.Converged)
        {
            yield return NotSettled.Broken(0, 0, "neck");
        }
    }

    private static IEnumerable<Finding> Gaps(InstrumentDesign design, NeckAndAction result)
    {
        StringHeights? worst = null;
        int at = 0;
        foreach (StringHeights each in result.Strung.Strings)
        {
            for (int k = 0; k < each.GapMm.Count; k++)
            {
                if (worst is null || each.GapMm[k] < worst.GapMm[at])
                {
                    (worst, at) = (each, k);
                }
            }
        }

        if (worst is null || worst.GapMm[at] >= design.Action.ClearanceMm)
        {
            yield break;
        }

        double gap = worst.GapMm[at];
        Rule rule = gap <= 0 ? Buzz : SmallGap;
        yield return rule.Broken(
            gap,
            gap <= 0 ? 0 : design.Action.ClearanceMm,
            "action",
            At(result, worst.Number, result.Model.Geometry.FretsMm[worst.GapFret[at]]),
            worst.Number,
            at,
            worst.GapFret[at]
        );
    }

    private static IEnumerable<Finding> Angles(InstrumentDesign design, NeckAndAction result)
    {
        StringHeights least = result.Strung.Strings.MinBy(each => each.BreakAngleRad)!;
        StringHeights most = result.Strung.Strings.MaxBy(each => each.BreakAngleRad)!;
        if (least.BreakAngleRad * RadToDeg < design.Saddle.BreakLeastDeg)
        {
            yield return BreakAngleSmall.Broken(
                least.BreakAngleRad * RadToDeg,
                design.Saddle.BreakLeastDeg,
                "saddle.tie_height",
                At(result, least.Number, double.PositiveInfinity),
                least.Number
            );
        }

        if (most.BreakAngleRad * RadToDeg > design.Saddle.BreakMostDeg)
        {
            yield return BreakAngleLarge.Broken(
                most.BreakAngleRad * RadToDeg,
                design.Saddle.BreakMostDeg,
                "saddle.tie_height",
                At(result, most.Number, double.PositiveInfinity),
                most.Number
            );
        }

        double total = result.Bridge.PullN;
        if (total > design.Load.TensionMostN)
        {
            yield return TensionHigh.Broken(total, design.Load.TensionMostN, "strings.set");
        }

        if (total < design.Load.TensionLeastN)
        {
            yield return TensionLow.Broken(total, design.Load.TensionLeastN, "strings.set");
        }
    }

    private static IEnumerable<Finding> Wood(InstrumentDesign design, NeckAndAction result)
    {
        FretRow near = result.Frets.MinBy(row => Math.Min(row.EdgeBassMm, row.EdgeTrebleMm))!;
        double edge = Math.Min(near.EdgeBassMm, near.EdgeTrebleMm);
        if (edge < design.Strings.EdgeMm)
        {
            double side = near.EdgeBassMm < near.EdgeTrebleMm ? -1 : 1;
            yield return StringNearEdge.Broken(
                edge,
                design.Strings.EdgeMm,
                "strings.spacing_nut",
                new Place(near.FromNutMm, side * 0.5 * near.BoardWidthMm),
                near.Fret
            );
        }

        SolveLimits limits = SolveLimits.Of(design);
        if (design.Neck.RampMm > limits.RampMm.Most)
        {
            yield return RampBeyondBoard.Broken(
                design.Neck.RampMm,
                limits.RampMm.Most,
                "neck.ramp",
                new Place(0, 0)
            );
        }

        if (design.Neck.RampMm < 0)
        {
            yield return RampBelowDatum.Broken(design.Neck.RampMm, 0, "neck.ramp", new Place(0, 0));
        }

        if (design.Dome.HeightMm > limits.DomeMm.Most)
        {
            yield return DomeBeyondBoard.Broken(
                design.Dome.HeightMm,
                limits.DomeMm.Most,
                "dome.height"
            );
        }

        double kink = Math.Abs(
            result.Model.Figures.RampMm / result.Model.Geometry.JoinMm * RadToDeg
        );
        if (design.Fingerboard.FollowsKink && kink > 0)
        {
            yield return Kink.Broken(
                result.Model.Figures.RampMm,
                0,
                "fingerboard.follows_kink",
                new Place(result.Model.Geometry.JoinMm, 0),
                kink
            );
        }

        FretRow thin = result.Frets.MinBy(row => row.BoardMm)!;
        if (thin.BoardMm < SolveLimits.LeastFingerboardMm)
        {
            yield return FingerboardThin.Broken(
                thin.BoardMm,
                SolveLimits.LeastFingerboardMm,
                "fingerboard.thickness_join",
                new Place(thin.FromNutMm, 0),
                thin.Fret
            );
        }

        double end = FretTable.EndMm(design, result.Model);
        if (end < result.Frets[^1].FromNutMm)
        {
            yield return FretPastEnd.Broken(
                result.Frets[^1].FromNutMm,
                end,
                "fingerboard.overhang",
                new Place(end, 0),
                result.Frets[^1].Fret
            );
        }

        if (Math.Abs(result.Bow.StrungMm - result.Bow.WantedMm) > BowMm)
        {
            yield return Bow.Broken(
                result.Bow.StrungMm,
                result.Bow.WantedMm,
                "fingerboard.bow_planed",
                null,
                result.Bow.ToPlaneMm
            );
        }
    }

    private static IEnumerable<Finding> Odds(InstrumentDesign design, NeckAndAction result)
    {
        bool perString =
            design.Saddle.Compensation
            is SaddleCompensation.PerString
                or SaddleCompensation.NutAndSaddle;
        double spread = result.Compensation.SaddleSpreadMm(result.Strings.Strings);
        if (perString && spread > design.Saddle.ThicknessMm)
        {
            yield return SaddleThin.Broken(spread, design.Saddle.ThicknessMm, "saddle.thickness");
        }

        const int octave = 12;
        StringIntonation off = result.Compensation.Strings.MaxBy(each =>
            Math.Abs(each.WorstCentsTo(octave))
        )!;
        double cents = off.WorstCentsTo(octave);
        if (Math.Abs(cents) > HeardCents)
        {
            yield return Intonation.Broken(
                cents,
                HeardCents,
                "saddle.compensation",
                null,
                off.Number
            );
        }

        if (result.Chance is { } chance && chance.InBand < PoorChance)
        {
            string input =
                result.ActionBass.Ranked.Count > 0
                    ? InstrumentWords.Of[$"chain-input.{result.ActionBass.Ranked[0].Input.Name}"]
                    : "";
            yield return PoorOdds.Broken(
                100 * chance.InBand,
                100 * PoorChance,
                "tolerances",
                null,
                input
            );
        }

        foreach (MeasuredRow row in result.Measured)
        {
            if (Math.Abs(row.DifferenceMm) > row.ExpectedMm)
            {
                yield return MeasuredOff.Broken(
                    row.MeasuredMm,
                    row.ComputedMm,
                    $"measured.{row.Key}",
                    null,
                    InstrumentWords.Of[$"measured.{row.Key}"],
                    row.ExpectedMm
                );
            }
        }
    }

    // A place on a string; past its end, the saddle.
    private static Place At(NeckAndAction result, int number, double xMm)
    {
        IReadOnlyList<InstrumentString> all = result.Strings.Strings;
        int i = all.Count - number;
        double x = Math.Min(xMm, result.Model.Geometry.SaddleMm[i]);
        return new(x, all[i].YAt(x / result.Strings.ScaleMm));
    }

    private static Rule Of(string code, Severity severity, string unit) =>
        new(code, severity, unit, InstrumentWords.Of);
}

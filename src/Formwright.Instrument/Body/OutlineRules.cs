using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Findings;

namespace Formwright.Instrument.Body;

/// <summary>Rules about the outline, and what the curve solver's problems mean to a maker.</summary>
public static class OutlineRules
{
    public static readonly Rule StationOutOfOrder = Stop("outline.station-out-of-order");
    public static readonly Rule BeyondTail = Stop("outline.beyond-tail");
    public static readonly Rule WaistNotNarrower = Stop("outline.waist-not-narrower");
    public static readonly Rule FlatTooWide = Stop("outline.flat-too-wide");
    public static readonly Rule RadiusOutOfReach = Stop("outline.radius-out-of-reach");
    public static readonly Rule NoFairCurve = Stop("outline.no-fair-curve");
    public static readonly Rule HollowEnd = new(
        "outline.hollow-end",
        Severity.Warn,
        "mm",
        InstrumentWords.Of
    );
    public static readonly Rule SoundholeOutside = Stop("outline.soundhole-outside");
    public static readonly Rule BarOutside = Stop("outline.bar-outside");

    /// <summary>One finding for each problem, tied to the field that cures it.</summary>
    /// <param name="problems">What the solver reported.</param>
    /// <param name="joinMm">Where the body starts in the instrument frame, mm.</param>
    /// <param name="design">The features, for the places.</param>
    public static IEnumerable<Finding> Of(
        IEnumerable<OutlineProblem> problems,
        double joinMm,
        OutlineDesign design
    )
    {
        foreach (OutlineProblem problem in problems)
        {
            Rule rule = RuleFor(problem.Fault);
            string feature = InstrumentWords.Of[$"feature.{problem.Feature}"];
            yield return rule.Broken(
                problem.MeasuredMm,
                problem.LimitMm,
                FieldOf(problem),
                PlaceOf(problem.Feature, joinMm, design),
                feature
            );
        }
    }

    private static Rule RuleFor(OutlineFault fault) =>
        fault switch
        {
            OutlineFault.StationOutOfOrder => StationOutOfOrder,
            OutlineFault.BeyondTail => BeyondTail,
            OutlineFault.WaistNotNarrower => WaistNotNarrower,
            OutlineFault.FlatTooWide => FlatTooWide,
            OutlineFault.RadiusOutOfReach => RadiusOutOfReach,
            OutlineFault.HollowEnd => HollowEnd,
            _ => NoFairCurve,
        };

    private static string FieldOf(OutlineProblem problem)
    {
        string end = problem.Fault switch
        {
            OutlineFault.RadiusOutOfReach => ".radius",
            OutlineFault.StationOutOfOrder or OutlineFault.BeyondTail => ".at",
            _ => ".width",
        };
        return problem.Feature switch
        {
            OutlineFeature.Heel => "outline.heel_flat",
            OutlineFeature.UpperBout => "outline.upper_bout" + end,
            OutlineFeature.Waist => "outline.waist" + end,
            OutlineFeature.LowerBout => "outline.lower_bout" + end,
            _ => problem.Fault
                is OutlineFault.FlatTooWide
                    or OutlineFault.FlatOutOfReach
                    or OutlineFault.HollowEnd
                ? "outline.tail_flat"
                : "outline.body_length",
        };
    }

    private static Place PlaceOf(OutlineFeature feature, double joinMm, OutlineDesign design) =>
        feature switch
        {
            OutlineFeature.Heel => new Place(joinMm, 0),
            OutlineFeature.UpperBout => At(design.UpperBout, joinMm),
            OutlineFeature.Waist => At(design.Waist, joinMm),
            OutlineFeature.LowerBout => At(design.LowerBout, joinMm),
            _ => new Place(joinMm + design.BodyLengthMm, 0),
        };

    private static Place At(BoutDesign bout, double joinMm) =>
        new(joinMm + bout.AtMm, bout.WidthMm / 2);

    private static Rule Stop(string code) => new(code, Severity.Stop, "mm", InstrumentWords.Of);
}

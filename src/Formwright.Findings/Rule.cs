using Formwright.Words;

namespace Formwright.Findings;

/// <summary>
/// One rule that a design can break. Its texts stand in the resources of the assembly that declares it, under
/// <c>{Code}.title</c>, <c>{Code}.message</c>, <c>{Code}.cure</c> and <c>{Code}.source</c> (a published source, or 'common practice'),
/// so that messages, page and documentation can't drift apart. In messages, cures and sources {0} is the measured figure,
/// {1} its limit, and {2} onwards whatever else the rule names.
/// </summary>
/// <param name="Code">Our own code, words joined by hyphens after the part's name: <c>mould.rebate-too-deep</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Unit">Unit of measured figure and limit: <c>mm</c>, <c>N</c>, <c>%</c>, or empty.</param>
/// <param name="Words">The texts of the declaring assembly.</param>
public sealed record Rule(string Code, Severity Severity, string Unit, Wording Words)
{
    /// <summary>What the rule is about, a few words.</summary>
    public string Title => Words[$"{Code}.title"];

    /// <summary>A finding against this rule.</summary>
    /// <param name="measured">The figure found, in <see cref="Unit"/>.</param>
    /// <param name="limit">The figure it is held against, in <see cref="Unit"/>.</param>
    /// <param name="field">Key of the design field that cures it, such as <c>mould.rebate.depth</c>.</param>
    /// <param name="place">Where it shows on a drawing, if it has a place.</param>
    /// <param name="more">Further values for {2}, {3} … of the texts.</param>
    public Finding Broken(
        double measured,
        double limit,
        string field,
        Place? place = null,
        params object?[] more
    ) => new(this, measured, limit, field, place, more);
}

using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Findings;

namespace Formwright.Packs.Report;

/// <summary>A finding.</summary>
public sealed record FindingReport(
    [property: Description("Code of the rule.")] string Code,
    [property: Description("stop, warn or note.")] string Severity,
    [property: Description("The figure found; absent where there is none.")] double? Measured,
    [property: Description("What it is held against; absent where there is no figure.")]
        double? Limit,
    [property: Description("Unit of both.")] string Unit,
    [property: Description("What is wrong.")] string Message,
    [property: Description("What to change.")] string Cure,
    [property: Description("Where the limit comes from.")] string Source,
    [property: Description("Key of the design that cures it.")] string Field
)
{
    internal static FindingReport Of(Finding finding) =>
        new(
            finding.Code,
            Choices.NameOf(finding.Severity),
            double.IsFinite(finding.Measured) ? finding.Measured : null,
            double.IsFinite(finding.Limit) ? finding.Limit : null,
            finding.Rule.Unit,
            finding.Message,
            finding.Cure,
            finding.Source,
            finding.Field
        );
}

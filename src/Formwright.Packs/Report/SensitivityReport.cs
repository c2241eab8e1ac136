using System.ComponentModel;
using Formwright.Instrument.Tolerances;

namespace Formwright.Packs.Report;

/// <summary>What one input does to the action.</summary>
public sealed record SensitivityReport(
    [property: Description("Key of the input in [tolerances].")] string Input,
    [property: Description("Change of the action for one unit of the input.")] double Sensitivity,
    [property: Description("Standard uncertainty that it adds, mm.")] double UncertaintyMm,
    [property: Description("What its whole tolerance does to the action, mm.")] double PlusMinusMm,
    [property: Description("Its share of the variance, 0 to 1.")] double Share
)
{
    internal static SensitivityReport Of(Contribution each) =>
        new(each.Input.Name, each.Sensitivity, each.Uncertainty, each.PlusMinus, each.Share);
}

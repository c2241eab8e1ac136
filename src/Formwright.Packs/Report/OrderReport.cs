using System.ComponentModel;
using Formwright.Jigs.Steps;

namespace Formwright.Packs.Report;

/// <summary>The order of work.</summary>
public sealed record OrderReport(
    [property: Description("Hours of the longest chain of waits for glue, finish and rest.")]
        double LongestWaitHours,
    [property: Description("The steps, each after what it needs.")] IReadOnlyList<StepReport> Steps
)
{
    /// <summary>The report of an order of work.</summary>
    public static OrderReport Of(WorkOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return new(
            order.LongestWaitHours,
            [.. order.Steps.Select(step => StepReport.Of(order, step))]
        );
    }
}

using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Jigs;
using Formwright.Jigs.Steps;

namespace Formwright.Packs.Report;

/// <summary>A step of the work.</summary>
public sealed record StepReport(
    [property: Description("Its number.")] int Number,
    [property: Description("Its own name.")] string Id,
    [property: Description("What is made: templates, workboard, mould, jig, each-use.")]
        string Piece,
    [property: Description("What is done, in the language of the sheets.")] string Title,
    [property: Description("How it is done.")] string How,
    [property: Description("Steps that must be done before.")] IReadOnlyList<string> Needs,
    [property: Description("What it takes.")] IReadOnlyList<string> Tools,
    [property: Description("How long the work then lies, hours; absent where it need not.")]
        double? WaitHours,
    [property: Description("What it waits for, with its source.")] string? Wait,
    [property: Description("Steps that can be done while it lies.")]
        IReadOnlyList<string>? Meanwhile,
    [property: Description("What must be measured before the next step.")]
        IReadOnlyList<GateReport> Gates,
    [property: Description("What can hurt.")] IReadOnlyList<CareReport> Cautions
)
{
    internal static StepReport Of(WorkOrder order, Step step) =>
        new(
            order.NumberOf(step),
            step.Id,
            Choices.NameOf(step.Piece),
            step.Title,
            step.How,
            [.. step.Needs.Select(need => need.Id)],
            [.. step.Tools.Select(tool => JigsWords.Of[$"tool.{Choices.NameOf(tool)}"])],
            step.Wait?.Hours,
            step.Wait?.Text,
            step.Wait is null ? null : [.. order.Meanwhile(step).Select(later => later.Id)],
            [.. step.Gates.Select(GateReport.Of)],
            [.. step.Cares.Select(CareReport.Of)]
        );
}

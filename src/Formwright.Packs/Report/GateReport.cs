using System.ComponentModel;
using Formwright.Jigs.Steps;

namespace Formwright.Packs.Report;

/// <summary>A figure that must be measured, and pass, before the next step.</summary>
public sealed record GateReport(
    [property: Description(
        "What to measure and what must come out, in the language of the sheets."
    )]
        string Text,
    [property: Description(
        "Where the figure stands: a JSON pointer into this report, or a key of the design."
    )]
        string Reference,
    [property: Description("Its value.")] double Value,
    [property: Description("How far it may be off; absent where nothing is stated.")]
        double? Tolerance,
    [property: Description("Its unit.")] string Unit
)
{
    internal static GateReport Of(Gate gate) =>
        new(
            gate.Text,
            gate.Figure.Reference,
            gate.Figure.Value,
            gate.Figure.Tolerance,
            gate.Figure.Unit
        );
}

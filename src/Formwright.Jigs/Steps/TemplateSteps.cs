namespace Formwright.Jigs.Steps;

/// <summary>The steps that make the templates.</summary>
/// <param name="Printed">The sheets are printed and their bars checked.</param>
/// <param name="Half">The half template is fair and true.</param>
/// <param name="Mating">Its negative fits it.</param>
/// <param name="Full">The full template.</param>
public sealed record TemplateSteps(Step Printed, Step Half, Step Mating, Step Full)
{
    internal static TemplateSteps Of(GateFigures figures)
    {
        Step printed = new("print", WorkPiece.Templates) { Tools = [Tool.Printer, Tool.Rule] };
        Step half = new("half-template", WorkPiece.Templates, printed)
        {
            Tools = [Tool.Saw, Tool.SandingBlock, Tool.Rule],
            Gates = [figures.BodyLength, figures.HalfPerimeter],
            Cares = [Care.Dust],
        };
        Step mating = new("mating-template", WorkPiece.Templates, half)
        {
            Tools = [Tool.Saw, Tool.SandingBlock],
            Cares = [Care.Dust],
        };
        Step full = new("full-template", WorkPiece.Templates, mating)
        {
            Tools = [Tool.Saw, Tool.SandingBlock, Tool.Caliper],
            Gates = [figures.UpperBout, figures.Waist, figures.LowerBout],
            Cares = [Care.Dust],
        };
        return new TemplateSteps(printed, half, mating, full);
    }
}

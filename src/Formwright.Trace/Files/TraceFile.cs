using Formwright.Design.Reading;

namespace Formwright.Trace.Files;

/// <summary>
/// What a trace file holds, in mm (y up), before anything is made of it. Every reader ends here (<see cref="ITraceReader"/>).
/// </summary>
/// <param name="Name">Name of the file as the maker gave it.</param>
/// <param name="Layout">What its figures are.</param>
/// <param name="Unit">What one unit of it means.</param>
/// <param name="Curves">The curves, in the order of the file.</param>
/// <param name="Notes">What was left out or taken for granted.</param>
public sealed record TraceFile(
    string Name,
    TraceLayout Layout,
    TraceUnit Unit,
    IReadOnlyList<TracedCurve> Curves,
    IReadOnlyList<Diagnostic> Notes
);

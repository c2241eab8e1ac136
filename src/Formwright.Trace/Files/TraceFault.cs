using Formwright.Design.Reading;

namespace Formwright.Trace.Files;

/// <summary>Ends the reading of a file from wherever the fault is found; it never leaves a reader.</summary>
internal sealed class TraceFault : Exception
{
    internal TraceFault(string file, int line, int column, string key, params object?[] values)
        : base(key) => Diagnostic = TraceDiagnostic.Of(file, line, column, key, values);

    internal Diagnostic Diagnostic { get; }
}

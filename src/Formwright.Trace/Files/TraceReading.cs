using System.Diagnostics.CodeAnalysis;
using Formwright.Design.Reading;

namespace Formwright.Trace.Files;

/// <summary>What came of reading a trace file: its curves, or why there are none.</summary>
/// <param name="File">The file's curves; null when there is any diagnostic.</param>
/// <param name="Diagnostics">The faults, in the order of the file; at most <see cref="MaxDiagnostics"/>.</param>
public sealed record TraceReading(TraceFile? File, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>After so many faults reading stops.</summary>
    public const int MaxDiagnostics = 20;

    /// <summary>Whether curves came out.</summary>
    [MemberNotNullWhen(true, nameof(File))]
    public bool Succeeded => File is not null;
}

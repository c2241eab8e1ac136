using System.Diagnostics.CodeAnalysis;
using Formwright.Design.Reading;

namespace Formwright.Trace;

/// <summary>What came of making a trace fair: the result, or why there is none.</summary>
public sealed record TraceOutcome(TraceResult? Result, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>Whether a result came out.</summary>
    [MemberNotNullWhen(true, nameof(Result))]
    public bool Succeeded => Result is not null;
}

using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>What the readers of one file share.</summary>
internal sealed class ReadingContext(
    string file,
    List<Diagnostic> diagnostics,
    List<KeySpec>? specs = null
)
{
    /// <summary>Set when the keys are listed instead of read.</summary>
    public List<KeySpec>? Specs { get; } = specs;

    /// <summary>Whether a missing key is a fault; not so when a line that couldn't be read may be the one that held it.</summary>
    public bool MissingMatters { get; } = diagnostics.Count == 0;

    /// <summary>Whether there are more diagnostics than a person reads.</summary>
    public bool IsFull => diagnostics.Count > DesignText.MaxDiagnostics;

    /// <summary>Where each key that was read stands.</summary>
    public Dictionary<string, SourceSpan> Places { get; } = new(StringComparer.Ordinal);

    /// <summary>What each key that was asked for came to: given, or its default.</summary>
    public Dictionary<string, object?> Values { get; } = new(StringComparer.Ordinal);

    public void Report(SourceSpan at, string key, string message) =>
        diagnostics.Add(new Diagnostic(file, at.Start.Line + 1, at.Start.Column + 1, key, message));
}

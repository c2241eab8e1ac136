using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>What the readers of one file share.</summary>
internal sealed class ReadingContext(
    string file,
    List<Diagnostic> diagnostics,
    List<KeySpec>? specs
)
{
    public string File { get; } = file;

    public List<Diagnostic> Diagnostics { get; } = diagnostics;

    /// <summary>Set when the keys are listed instead of read.</summary>
    public List<KeySpec>? Specs { get; } = specs;

    /// <summary>Where each key that was read stands.</summary>
    public Dictionary<string, SourceSpan> Places { get; } = new(StringComparer.Ordinal);
}

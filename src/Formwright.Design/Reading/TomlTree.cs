using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>A table of the file: what its keys hold and where they stand.</summary>
internal sealed class TomlTable(SourceSpan span)
{
    public SourceSpan Span { get; } = span;

    public Dictionary<string, TomlEntry> Entries { get; } = new(StringComparer.Ordinal);
}

/// <summary>One key: exactly one of value, table and list of tables is set.</summary>
internal sealed record TomlEntry(
    SourceSpan Span,
    ValueSyntax? Value,
    TomlTable? Table,
    List<TomlTable>? Tables
);

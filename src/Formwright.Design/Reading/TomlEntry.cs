using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>One key: exactly one of value, table and list of tables is set.</summary>
/// <param name="Span">Where the key stands.</param>
/// <param name="Value">A plain value.</param>
/// <param name="Table">A table.</param>
/// <param name="Tables">A list of tables.</param>
/// <param name="Pair">The <c>key = value</c> that holds it; null for headings and tables made in passing.</param>
internal sealed record TomlEntry(
    SourceSpan Span,
    ValueSyntax? Value,
    TomlTable? Table,
    List<TomlTable>? Tables,
    KeyValueSyntax? Pair
);

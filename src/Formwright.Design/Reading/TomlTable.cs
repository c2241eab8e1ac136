using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <summary>A table of the file: what its keys hold and where they stand.</summary>
/// <param name="span">Where it opens: its heading, its <c>{</c>, or the key that made it in passing.</param>
/// <param name="origin">How it came to be; it decides what may still be added to it.</param>
/// <param name="node">Its heading or its <c>{ }</c> in the text, if it has one.</param>
internal sealed class TomlTable(SourceSpan span, TableOrigin origin, SyntaxNode? node = null)
{
    public SourceSpan Span { get; private set; } = span;

    public TableOrigin Origin { get; private set; } = origin;

    public SyntaxNode? Node { get; private set; } = node;

    public Dictionary<string, TomlEntry> Entries { get; } = new(StringComparer.Ordinal);

    /// <summary>A table that a longer heading made in passing gets its own heading.</summary>
    public void Open(TableSyntaxBase heading)
    {
        Span = heading.Name!.Span;
        Origin = TableOrigin.Heading;
        Node = heading;
    }
}

namespace Formwright.Design.Reading;

/// <summary>One fault of a design file, with its place.</summary>
/// <param name="File">Name of the file as the maker gave it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
/// <param name="Key">Dotted key it concerns, or empty.</param>
/// <param name="Message">What is wrong and what was expected, in the reader's language.</param>
public sealed record Diagnostic(string File, int Line, int Column, string Key, string Message)
{
    /// <summary><c>file:line:column: message</c>, as editors and terminals link it.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Message}";
}

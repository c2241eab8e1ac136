namespace Formwright.Design.Reading;

/// <summary>The first thing that the parser objects to.</summary>
/// <param name="Offset">Where, in characters of UTF-16 from the start of the parsed text.</param>
/// <param name="Message">The parser's own words; never shown to a maker.</param>
internal sealed record SyntaxFault(int Offset, string Message);

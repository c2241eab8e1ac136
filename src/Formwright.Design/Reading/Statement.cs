namespace Formwright.Design.Reading;

/// <summary>One heading or one <c>key = value</c> of a file that as a whole can't be parsed.</summary>
/// <param name="Start">Offset of its first character.</param>
/// <param name="End">Offset after its last character.</param>
/// <param name="IsHeading">Whether it starts with <c>[</c>.</param>
/// <param name="OpenAt">Offset of a quote or bracket that is never closed, or -1.</param>
internal readonly record struct Statement(int Start, int End, bool IsHeading, int OpenAt);

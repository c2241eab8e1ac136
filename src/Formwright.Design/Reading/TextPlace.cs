namespace Formwright.Design.Reading;

/// <summary>A place in a text; both from 1, columns in characters.</summary>
public readonly record struct TextPlace(int Line, int Column);

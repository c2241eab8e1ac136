namespace Formwright.Design;

/// <summary>A length written for a person.</summary>
/// <param name="Text">What stands on the sheet or page, with its unit.</param>
/// <param name="ErrorMm">What is written less what is meant, mm.</param>
public readonly record struct WrittenLength(string Text, double ErrorMm);

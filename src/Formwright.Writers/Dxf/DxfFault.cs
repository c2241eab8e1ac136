namespace Formwright.Writers;

/// <summary>Something that a reader of a DXF file may stumble over.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Message">What is wrong.</param>
public sealed record DxfFault(int Line, string Message);

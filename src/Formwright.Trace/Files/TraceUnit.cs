namespace Formwright.Trace.Files;

/// <summary>What one unit of a file means.</summary>
/// <param name="MmPerUnit">Millimetres in one unit.</param>
/// <param name="IsStated">The file says so itself; otherwise it is a guess, and a known length should set the scale.</param>
/// <param name="Source">Key of the sentence in the resources that says where it comes from.</param>
public readonly record struct TraceUnit(double MmPerUnit, bool IsStated, string Source)
{
    /// <summary>Where the unit comes from, in the reader's language.</summary>
    public string Message => TraceWords.Of.Format(Source, MmPerUnit);
}

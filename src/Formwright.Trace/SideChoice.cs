namespace Formwright.Trace;

/// <summary>Which side of a trace a fair outline follows.</summary>
public enum SideChoice
{
    /// <summary>The mean of both sides.</summary>
    Averaged,
    Treble,
    Bass,
}

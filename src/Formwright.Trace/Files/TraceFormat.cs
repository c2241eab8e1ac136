namespace Formwright.Trace.Files;

/// <summary>Kinds of files that a trace comes in.</summary>
public enum TraceFormat
{
    Svg,
    Dxf,
    Csv,
}

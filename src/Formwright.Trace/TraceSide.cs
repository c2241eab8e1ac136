namespace Formwright.Trace;

/// <summary>A side of the instrument, seen from the front with the neck up: bass left, treble right.</summary>
public enum TraceSide
{
    Treble,
    Bass,
}

namespace Formwright.Trace.Files;

/// <summary>What the figures of a file are.</summary>
public enum TraceLayout
{
    /// <summary>A drawing: places in a plane, the centreline is to be found.</summary>
    Drawing,

    /// <summary>Stations along the centreline and half widths: the centreline is y = 0 and one half is given.</summary>
    HalfWidths,

    /// <summary>Stations and the half widths of both sides: y = 0 is the centreline; two curves, bass side negative.</summary>
    BothHalfWidths,
}

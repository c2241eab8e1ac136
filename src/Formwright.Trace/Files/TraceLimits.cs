namespace Formwright.Trace.Files;

/// <summary>How much a trace file may hold: beyond it reading stops with one diagnostic, so that time and memory stay bounded.</summary>
public static class TraceLimits
{
    /// <summary>Largest file, bytes.</summary>
    public const int MaxBytes = 64_000_000;

    /// <summary>Most pieces (lines, arcs, Béziers, splines) of all curves together.</summary>
    public const int MaxPieces = 400_000;

    /// <summary>Most points after sampling.</summary>
    public const int MaxPoints = 2_000_000;

    /// <summary>Most elements of an SVG.</summary>
    public const int MaxElements = 200_000;

    /// <summary>Deepest nesting of SVG groups and of DXF blocks.</summary>
    public const int MaxDepth = 32;

    /// <summary>Largest coordinate that is taken for a drawing's, in its own unit and in mm.</summary>
    public const double MaxCoordinate = 1e7;
}

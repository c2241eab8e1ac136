namespace Formwright.Drawing;

/// <summary>A line to cut along, of straight pieces and arcs only.</summary>
public sealed record CutContour
{
    /// <param name="operation">What is done along it.</param>
    /// <param name="shape">Part mm; cubics must have been turned into arcs.</param>
    /// <param name="depthMm">Depth from the upper face; null for right through, or for a line that is only scribed.</param>
    /// <exception cref="ArgumentException">A cubic, fewer than two points, an open outside cut, inside cut or pocket, a depth that is not positive.</exception>
    public CutContour(CutOperation operation, Shape shape, double? depthMm = null)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (operation == CutOperation.Drill)
        {
            throw new ArgumentException("A hole is no contour.", nameof(operation));
        }

        if (shape.Segments.Count == 0 || shape.Segments.Any(s => s is CubicSegment))
        {
            throw new ArgumentException("A contour is made of lines and arcs.", nameof(shape));
        }

        if (operation != CutOperation.Engrave && !shape.Closed)
        {
            throw new ArgumentException($"{operation} needs a closed contour.", nameof(shape));
        }

        if (depthMm is { } depth && !(depth > 0 && double.IsFinite(depth)))
        {
            throw new ArgumentOutOfRangeException(nameof(depthMm));
        }

        Operation = operation;
        Shape = shape;
        DepthMm = depthMm;
    }

    public CutOperation Operation { get; }

    public Shape Shape { get; }

    public double? DepthMm { get; }
}

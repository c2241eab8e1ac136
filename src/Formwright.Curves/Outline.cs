namespace Formwright.Curves;

/// <summary>
/// An outline: half a closed curve (the treble half, y ≥ 0), mirrored on the centreline for the bass half. Body frame: u along the
/// centreline from the heel (0) to the tail, y towards the treble side.
/// </summary>
public sealed class Outline
{
    /// <param name="half">From the heel (0, 0) to the tail (body length, 0), y ≥ 0.</param>
    /// <exception cref="ArgumentException">It is closed, or its ends are not on the centreline.</exception>
    public Outline(Chain half)
    {
        ArgumentNullException.ThrowIfNull(half);
        Half = half;
    }

    /// <summary>The treble half from heel to tail. Seen in the body frame it turns to the right on the bouts, so there κ &lt; 0.</summary>
    public Chain Half { get; }

    public double BodyLengthMm => Half.End.Position.X;

    public double HalfPerimeterMm => Half.LengthMm;

    /// <summary>Area of the whole outline, mm².</summary>
    public double AreaMm2 => throw new NotImplementedException();

    /// <summary>Station of the area's centroid, mm (it lies on the centreline).</summary>
    public double CentroidUMm => throw new NotImplementedException();

    /// <summary>The whole closed chain, counter-clockwise (bass side from heel to tail, then the treble side back): convex is κ &gt; 0.</summary>
    public Chain Closed() => throw new NotImplementedException();

    /// <summary>Full width at a station, mm: between the outermost places. 0 outside the body.</summary>
    public double WidthAt(double uMm) => throw new NotImplementedException();

    /// <summary>The outermost place of the treble half at a station; null outside the body.</summary>
    public ChainPoint? AtStation(double uMm) => throw new NotImplementedException();

    /// <summary>Widths and curvatures at every multiple of a step, and at the tail.</summary>
    public IReadOnlyList<OutlineRow> Table(double stepMm = 10) =>
        throw new NotImplementedException();

    /// <summary>Whether a place (u, y) of the body frame lies within the outline.</summary>
    public bool Contains(Point place) => throw new NotImplementedException();
}

namespace Formwright.Curves;

/// <summary>
/// An exact offset curve: the ends of the source's normals, with round corners where the source has corners. It runs the way the source
/// does. Convert it with <see cref="Conversions"/>.
/// </summary>
public sealed class OffsetPath : ICurve
{
    private readonly OffsetSpan[] spans;

    internal OffsetPath(IEnumerable<OffsetSpan> spans, double distanceMm, bool isClosed)
    {
        this.spans = [.. spans];
        DistanceMm = distanceMm;
        IsClosed = isClosed;
    }

    /// <summary>Distance from the source, mm, positive to the left of it.</summary>
    public double DistanceMm { get; }

    public bool IsClosed { get; }

    public int SpanCount => spans.Length;

    /// <summary>Arc length, mm; exact.</summary>
    public double LengthMm => spans.Sum(span => span.LengthMm(0, span.End));

    public CurvePoint Start => spans[0].At(0);

    public CurvePoint End => spans[^1].At(spans[^1].End);

    public double SpanEnd(int span) => spans[span].End;

    /// <summary>The offset at a parameter of a span: arc length along the source, or the angle turned at a round corner.</summary>
    public CurvePoint At(int span, double t) => spans[span].At(t);

    public double SpanLengthMm(int span, double from, double to) => spans[span].LengthMm(from, to);
}

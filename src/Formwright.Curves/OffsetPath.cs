namespace Formwright.Curves;

/// <summary>An exact offset curve: runs of the source's normals, with round corners where the source has corners.</summary>
public sealed class OffsetPath : ICurve
{
    public bool IsClosed => throw new NotImplementedException();

    public int SpanCount => throw new NotImplementedException();

    public double LengthMm => throw new NotImplementedException();

    public double SpanEnd(int span) => throw new NotImplementedException();

    public CurvePoint At(int span, double t) => throw new NotImplementedException();

    public double SpanLengthMm(int span, double from, double to) =>
        throw new NotImplementedException();
}

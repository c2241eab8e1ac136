namespace Formwright.Curves;

/// <summary>
/// A curve as a row of smooth spans: in each the curvature is continuous and monotone. Neighbouring spans share their place; they may
/// meet at a corner. Chains and their offsets are such curves, and every conversion starts from one.
/// </summary>
public interface ICurve
{
    /// <summary>The end of the last span meets the start of the first.</summary>
    bool IsClosed { get; }

    int SpanCount { get; }

    /// <summary>Arc length of the whole, mm.</summary>
    double LengthMm { get; }

    /// <summary>The parameter of a span runs from 0 to this.</summary>
    double SpanEnd(int span);

    /// <summary>The curve at a parameter of a span.</summary>
    CurvePoint At(int span, double t);

    /// <summary>Arc length of a span between two of its parameters, mm.</summary>
    double SpanLengthMm(int span, double from, double to);
}

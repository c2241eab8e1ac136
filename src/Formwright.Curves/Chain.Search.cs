namespace Formwright.Curves;

/// <content>Nearest places, crossings, extremes.</content>
public sealed partial class Chain
{
    /// <summary>The nearest place of the chain.</summary>
    public NearestPoint Nearest(Point place) => throw new NotImplementedException();

    /// <summary>Where the chain meets the line x = <paramref name="xMm"/>, in order of arc length.</summary>
    public IReadOnlyList<ChainPoint> CrossingsAtX(double xMm) =>
        throw new NotImplementedException();

    /// <summary>Where the chain meets the line y = <paramref name="yMm"/>, in order of arc length.</summary>
    public IReadOnlyList<ChainPoint> CrossingsAtY(double yMm) =>
        throw new NotImplementedException();

    /// <summary>Where the tangent runs along an angle (or against it), in order of arc length: at angle 0 the extremes of y, at π/2 those of x.</summary>
    public IReadOnlyList<ChainPoint> TangentsAlong(double angle) =>
        throw new NotImplementedException();

    /// <summary>Smallest upright box around the chain.</summary>
    public Box Box => throw new NotImplementedException();
}

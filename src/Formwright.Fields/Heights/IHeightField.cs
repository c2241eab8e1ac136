using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// A smooth height over a region: a dome, a relief, an arched back. Everything that follows a surface (boards, gauges,
/// braces, saddle, contours) reads it through this.
/// </summary>
/// <remarks>Implementations are immutable and safe to use from several threads.</remarks>
public interface IHeightField
{
    /// <summary>Where the field stands. Outside, height, slope and curvature are 0.</summary>
    Region Region { get; }

    /// <summary>The highest place.</summary>
    HeightPeak Peak { get; }

    /// <summary>Height, mm.</summary>
    double HeightAt(Point place);

    /// <summary>Height, slope and curvature.</summary>
    HeightSample At(Point place);
}

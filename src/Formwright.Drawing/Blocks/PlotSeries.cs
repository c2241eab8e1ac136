using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A curve of a <see cref="Plot"/>, in its own values; <paramref name="Name"/> is lettered at its right end.</summary>
public sealed record PlotSeries(IReadOnlyList<Point> Points, string Name = "")
{
    public LineStyle Style { get; init; } = LineStyle.Curve;

    /// <summary>Letters the name on the line, near its end: for straight lines that run alike and leave by different sides.</summary>
    public bool NameOnLine { get; init; }
}

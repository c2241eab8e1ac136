using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>One line of text.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Start">Left end of its baseline.</param>
/// <param name="AngleRad">Direction of its baseline, left positive.</param>
/// <param name="Style">How it is lettered.</param>
/// <param name="Level">What it lies over.</param>
/// <param name="Key">Name of its item.</param>
public sealed record TextMark(
    string Text,
    Point Start,
    double AngleRad,
    TextStyle Style,
    Level Level,
    string? Key
) : Mark(Level, Key)
{
    /// <summary>Depth of g and p below the baseline, over the height of a capital (0.2 em for this face).</summary>
    public const double DescentOverHeight = 0.29;

    public override string Layer => Style.Layer;

    public double WidthMm => Style.WidthMm(Text);

    /// <summary>The four corners around the letters, from the lower left one counter-clockwise.</summary>
    public IReadOnlyList<Point> Corners()
    {
        Vector along = Vector.At(AngleRad);
        Point low = Start - (DescentOverHeight * Style.HeightMm * along.Left);
        Point high = Start + (Style.HeightMm * along.Left);
        Vector run = WidthMm * along;
        return [low, low + run, high + run, high];
    }
}

namespace Formwright.Drawing;

/// <summary>A line along a shape.</summary>
public sealed record StrokeMark(Shape Shape, LineStyle Style, Level Level, string? Key)
    : Mark(Level, Key)
{
    public override string Layer => Style.Layer;
}

namespace Formwright.Drawing;

/// <summary>A flat fill between closed loops (even-odd: a loop inside a loop is a hole).</summary>
public sealed record FillMark(
    IReadOnlyList<Shape> Loops,
    Tone Tone,
    string Layer,
    Level Level,
    string? Key
) : Mark(Level, Key)
{
    public override string Layer { get; } = Layer;
}

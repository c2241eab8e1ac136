using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets.Body;

/// <summary>Blocks under each other that stand in a row as one.</summary>
internal sealed record StackBlock(IReadOnlyList<Block> Blocks) : Block
{
    private const double GapMm = 5;

    public override Size Size =>
        new(
            Blocks.Max(block => block.Size.WidthMm),
            Blocks.Sum(block => block.Size.HeightMm) + (GapMm * (Blocks.Count - 1))
        );

    protected override void DrawAt(Ink ink, Point corner)
    {
        foreach (Block block in Flow.Down(corner, GapMm, [.. Blocks]))
        {
            ink.Draw(block, Placement.Identity);
        }
    }
}

using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Puts blocks under each other.</summary>
public static class Flow
{
    /// <summary>The blocks from <paramref name="topLeft"/> downwards with <paramref name="gapMm"/> between them.</summary>
    public static IReadOnlyList<Block> Down(Point topLeft, double gapMm, params Block[] blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        List<Block> placed = new(blocks.Length);
        Point at = topLeft;
        foreach (Block block in blocks)
        {
            placed.Add(block with { TopLeft = at });
            at -= new Vector(0, block.Size.HeightMm + gapMm);
        }

        return placed;
    }
}

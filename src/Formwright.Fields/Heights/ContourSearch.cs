using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>Heights on a square grid, and the loops of grid edges that a height crosses.</summary>
internal sealed class ContourSearch
{
    private readonly double stepMm;
    private readonly Point origin;
    private readonly int columns;
    private readonly int rows;
    private readonly double[] heights;

    internal ContourSearch(IHeightField field, double stepMm)
    {
        this.stepMm = stepMm;
        // One step of nothing all round, so that every line closes or ends at the field's edge.
        Box bounds = field.Region.Bounds;
        columns = (int)Math.Ceiling(bounds.WidthMm / stepMm) + 3;
        rows = (int)Math.Ceiling(bounds.HeightMm / stepMm) + 3;
        origin = new(
            bounds.Centre.X - ((columns - 1) * stepMm / 2),
            bounds.Centre.Y - ((rows - 1) * stepMm / 2)
        );
        heights = new double[columns * rows];
        for (int i = 0; i < heights.Length; i++)
        {
            heights[i] = field.HeightAt(Node(i));
        }
    }

    /// <summary>Each loop as the grid edges it crosses, higher end first, with higher ground to the left of the walk.</summary>
    internal IEnumerable<List<(Point Higher, Point Lower)>> Loops(double height)
    {
        var next = new SortedDictionary<int, int>();
        for (int row = 0; row + 1 < rows; row++)
        {
            for (int column = 0; column + 1 < columns; column++)
            {
                CrossCell((row * columns) + column, height, next);
            }
        }
        while (next.Count > 0)
        {
            var loop = new List<(Point, Point)>();
            int edge = next.First().Key;
            while (next.Remove(edge, out int following))
            {
                int a = edge >> 1;
                int b = (edge & 1) == 0 ? a + 1 : a + columns;
                loop.Add(heights[a] >= height ? (Node(a), Node(b)) : (Node(b), Node(a)));
                edge = following;
            }
            yield return loop;
        }
    }

    /// <summary>
    /// Adds the pieces within one cell. Round the cell counter-clockwise a piece starts where the ground falls below the
    /// height and ends where it rises above; in a saddle the middle decides which belong together.
    /// </summary>
    private void CrossCell(int node, double height, SortedDictionary<int, int> next)
    {
        Span<int> corners = [node, node + 1, node + 1 + columns, node + columns];
        // An edge is twice its lower left node, plus 1 when upright.
        Span<int> edges = [2 * node, (2 * (node + 1)) + 1, 2 * (node + columns), (2 * node) + 1];
        int high = 0;
        double sum = 0;
        foreach (int corner in corners)
        {
            high += heights[corner] >= height ? 1 : 0;
            sum += heights[corner];
        }
        if (high is 0 or 4)
        {
            return;
        }
        int turn = sum / 4 >= height ? 1 : 3;
        for (int side = 0; side < 4; side++)
        {
            if (!Falls(corners, side, height))
            {
                continue;
            }
            int end = side;
            do
            {
                end = (end + turn) % 4;
            } while (!Rises(corners, end, height));
            next[edges[side]] = edges[end];
        }
    }

    private bool Falls(ReadOnlySpan<int> corners, int side, double height) =>
        heights[corners[side]] >= height && heights[corners[(side + 1) % 4]] < height;

    private bool Rises(ReadOnlySpan<int> corners, int side, double height) =>
        heights[corners[side]] < height && heights[corners[(side + 1) % 4]] >= height;

    private Point Node(int node) =>
        new(origin.X + (node % columns * stepMm), origin.Y + (node / columns * stepMm));
}

using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// One square grid over a region: which nodes lie inside, and the five-point equations of -∇²u = f there.
/// Next to the edge the equations are those of Shortley &amp; Weller (1938): each arm that meets the edge is as long as
/// the true distance to it, so that a curved edge is no staircase.
/// </summary>
/// <remarks>
/// Nodes lie at whole multiples of the step, counted from the frame's origin: a region that is mirrored on an axis has a
/// mirrored grid. Equations are scaled by the square of the step.
/// </remarks>
internal sealed class MembraneGrid
{
    /// <summary>A node nearer to the edge than this part of a step lies on it (derived: far above rounding, far below any effect).</summary>
    internal const double OnEdge = 1e-9;

    /// <summary>Nodes outside, around the region, so that every inner node has four neighbours.</summary>
    private const int Rim = 1;

    internal MembraneGrid(Region region, LineCrossings rows, LineCrossings columns, double stepMm)
    {
        StepMm = stepMm;
        RowCrossings = rows;
        ColumnCrossings = columns;
        Box bounds = region.Bounds;
        FirstX = (int)Math.Floor(bounds.Min.X / StepMm) - Rim;
        FirstY = (int)Math.Floor(bounds.Min.Y / StepMm) - Rim;
        Columns = (int)Math.Ceiling(bounds.Max.X / StepMm) + Rim - FirstX + 1;
        Rows = (int)Math.Ceiling(bounds.Max.Y / StepMm) + Rim - FirstY + 1;
        // 0 outside, 1 inside, from 2 on inside with arms cut by the edge: number of its equation plus 2.
        var node = new int[Columns * Rows];
        MarkInside(node);
        Spans = FindSpans(node, out int unknowns);
        Unknowns = unknowns;
        var cut = new List<CutNode>();
        CutArms(node, cut, alongRow: true);
        CutArms(node, cut, alongRow: false);
        Cut = [new(cut, this, colour: 0), new(cut, this, colour: 1)];
        U = new double[Columns * Rows];
        F = new double[Columns * Rows];
    }

    internal double StepMm { get; }

    /// <summary>Where the lines along x cross the edge; line 0 passes through the frame's origin.</summary>
    internal LineCrossings RowCrossings { get; }

    /// <summary>Where the lines along y cross the edge.</summary>
    internal LineCrossings ColumnCrossings { get; }

    /// <summary>Index of the first column's line, counted from the frame's origin.</summary>
    internal int FirstX { get; }

    internal int FirstY { get; }

    internal int Columns { get; }

    internal int Rows { get; }

    internal int Unknowns { get; }

    /// <summary>Runs of inner nodes along the rows, in order.</summary>
    internal Span[] Spans { get; }

    /// <summary>Equations of nodes whose arms are cut, by colour of the node.</summary>
    internal CutEquations[] Cut { get; }

    /// <summary>The unknowns; 0 outside.</summary>
    internal double[] U { get; }

    /// <summary>Right-hand side times the square of the step.</summary>
    internal double[] F { get; }

    /// <summary>Colour of a node on the chessboard that is counted from the frame's origin.</summary>
    internal int Colour(int column, int row) => (FirstX + column + FirstY + row) & 1;

    /// <summary>A run of inner nodes [From, To) in a row; indices into the arrays.</summary>
    internal readonly record struct Span(int Row, int From, int To);

    private void MarkInside(int[] node)
    {
        for (int row = 0; row < Rows; row++)
        {
            ReadOnlySpan<double> crossings = RowCrossings.On(FirstY + row);
            for (int i = 0; i + 1 < crossings.Length; i += 2)
            {
                int from = (int)Math.Ceiling(crossings[i] + OnEdge) - FirstX;
                int to = (int)Math.Floor(crossings[i + 1] - OnEdge) - FirstX;
                if (to >= from)
                {
                    node.AsSpan((row * Columns) + from, to - from + 1).Fill(1);
                }
            }
        }
        for (int column = 0; column < Columns; column++)
        {
            foreach (double crossing in ColumnCrossings.On(FirstX + column))
            {
                double line = Math.Round(crossing);
                if (Math.Abs(crossing - line) <= OnEdge)
                {
                    node[(((int)line - FirstY) * Columns) + column] = 0;
                }
            }
        }
    }

    private Span[] FindSpans(int[] node, out int unknowns)
    {
        var spans = new List<Span>(Rows * 2);
        unknowns = 0;
        for (int row = 0; row < Rows; row++)
        {
            int i = row * Columns;
            int end = i + Columns;
            while (i < end)
            {
                int skip = node.AsSpan(i, end - i).IndexOfAnyExcept(0);
                if (skip < 0)
                {
                    break;
                }
                int from = i + skip;
                int length = node.AsSpan(from, end - from).IndexOf(0);
                i = length < 0 ? end : from + length;
                spans.Add(new(row, from, i));
                unknowns += i - from;
            }
        }
        return [.. spans];
    }

    private void CutArms(int[] node, List<CutNode> cut, bool alongRow)
    {
        LineCrossings lines = alongRow ? RowCrossings : ColumnCrossings;
        int count = alongRow ? Rows : Columns;
        int first = alongRow ? FirstX : FirstY;
        for (int line = 0; line < count; line++)
        {
            foreach (double crossing in lines.On((alongRow ? FirstY : FirstX) + line))
            {
                double at = crossing - first;
                int before = (int)Math.Ceiling(at - OnEdge) - 1;
                int after = (int)Math.Floor(at + OnEdge) + 1;
                Shorten(line, before, at - before, forward: true);
                Shorten(line, after, after - at, forward: false);
            }
        }

        void Shorten(int line, int along, double arm, bool forward)
        {
            int index = alongRow ? (line * Columns) + along : (along * Columns) + line;
            if (arm >= 1 - OnEdge || node[index] == 0)
            {
                return;
            }
            if (node[index] == 1)
            {
                node[index] = cut.Count + 2;
                cut.Add(new(index, 1, 1, 1, 1));
            }
            int number = node[index] - 2;
            CutNode old = cut[number];
            cut[number] = (alongRow, forward) switch
            {
                (true, false) => old with { West = Math.Min(old.West, arm) },
                (true, true) => old with { East = Math.Min(old.East, arm) },
                (false, false) => old with { South = Math.Min(old.South, arm) },
                (false, true) => old with { North = Math.Min(old.North, arm) },
            };
        }
    }
}

using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>Values at the nodes of a square grid whose lines lie at whole multiples of the step from the frame's origin.</summary>
internal sealed class NodeArray(double stepMm, int firstX, int firstY, int columns, int rows)
{
    internal double StepMm => stepMm;

    internal int FirstX => firstX;

    internal int FirstY => firstY;

    internal int Columns => columns;

    internal int Rows => rows;

    internal double[] Values { get; } = new double[columns * rows];

    /// <summary>How each value is known: 0 not at all, 1 given inside the region, more: continued beyond the edge.</summary>
    internal byte[] Known { get; } = new byte[columns * rows];

    internal Span<double> Row(int row) => Values.AsSpan(row * columns, columns);

    /// <summary>The node inside with the largest value; of equals the first.</summary>
    internal Point LargestInside()
    {
        int best = -1;
        for (int i = 0; i < Values.Length; i++)
        {
            if (Known[i] == 1 && (best < 0 || Values[i] > Values[best]))
            {
                best = i;
            }
        }
        return new((firstX + (best % columns)) * stepMm, (firstY + (best / columns)) * stepMm);
    }
}

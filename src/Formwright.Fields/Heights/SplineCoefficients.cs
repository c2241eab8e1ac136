using System.Numerics;

namespace Formwright.Fields;

/// <summary>Coefficients of the bicubic B-spline that follows node values: c = u - δ²u/6 along each axis in turn.</summary>
internal static class SplineCoefficients
{
    internal static NodeArray Of(NodeArray values)
    {
        int columns = values.Columns;
        int rows = values.Rows;
        var along = new double[columns * rows];
        for (int row = 0; row < rows; row++)
        {
            ReadOnlySpan<double> u = values.Row(row);
            Span<double> into = along.AsSpan(row * columns, columns);
            Sharpen(u[..^2], u[1..^1], u[2..], into[1..^1]);
        }
        var result = new NodeArray(values.StepMm, values.FirstX, values.FirstY, columns, rows);
        for (int row = 1; row + 1 < rows; row++)
        {
            int at = row * columns;
            Sharpen(
                along.AsSpan(at - columns, columns),
                along.AsSpan(at, columns),
                along.AsSpan(at + columns, columns),
                result.Row(row)
            );
        }
        return result;
    }

    private static void Sharpen(
        ReadOnlySpan<double> before,
        ReadOnlySpan<double> middle,
        ReadOnlySpan<double> after,
        Span<double> into
    )
    {
        int i = 0;
        for (; i + Vector<double>.Count <= into.Length; i += Vector<double>.Count)
        {
            (
                (new Vector<double>(middle[i..]) * (4.0 / 3))
                - ((new Vector<double>(before[i..]) + new Vector<double>(after[i..])) * (1.0 / 6))
            ).CopyTo(into[i..]);
        }
        for (; i < into.Length; i++)
        {
            into[i] = (middle[i] * (4.0 / 3)) - ((before[i] + after[i]) * (1.0 / 6));
        }
    }
}

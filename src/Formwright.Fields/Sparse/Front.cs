using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Sparse;

/// <summary>
/// Dense symmetric work space of one elimination block: its first unknowns are eliminated (LDLᵀ without exchanging rows), what they leave
/// in the others stays behind. Only the lower triangle counts. Rows are contiguous and a little longer than they need to be, so that
/// whole vectors may be written past the diagonal.
/// </summary>
internal sealed class Front
{
    // Tuned: the panel of a front of 1000 rows still fits a second-level cache.
    private const int PanelWidth = 48;
    private const int Step = 4;

    private double[] values = [];
    private double[] work = [];
    private double[] panel = [];
    private readonly double[] row = new double[PanelWidth + Step];
    private readonly double[] head = new double[PanelWidth * (PanelWidth + Step)];

    internal int Rows { get; private set; }

    internal int Stride { get; private set; }

    internal Span<double> Row(int i) => values.AsSpan(i * Stride, Stride);

    internal void Clear(int rows)
    {
        Rows = rows;
        Stride = ((rows + 7) & ~7) + 8;
        int size = rows * Stride;
        if (values.Length < size)
        {
            values = new double[size];
        }
        else
        {
            values.AsSpan(0, size).Clear();
        }

        if (work.Length < (rows + Step) * PanelWidth)
        {
            work = new double[(rows + Step) * PanelWidth];
            panel = new double[PanelWidth * (Stride + 8)];
        }
    }

    /// <summary>Eliminates the first <paramref name="count"/> unknowns; afterwards their columns hold L, <paramref name="pivots"/> D.</summary>
    internal void Eliminate(int count, Span<double> pivots)
    {
        for (int from = 0; from < count; from += PanelWidth)
        {
            int to = Math.Min(from + PanelWidth, count);
            Panel(from, to, pivots);
            Update(from, to);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Panel(int from, int to, Span<double> pivots)
    {
        int width = to - from;
        const int HeadStride = PanelWidth + Step;
        head.AsSpan().Clear();
        int panelStride = Stride + 8;
        for (int i = from; i < Rows; i++)
        {
            Span<double> own = Row(i).Slice(from, width);
            int known = Math.Min(i - from, width);
            own[..Math.Min(width, i - from + 1)].CopyTo(row);
            for (int k = 0; k < known; k++)
            {
                Vector256<double> factor = Vector256.Create(-row[k]);
                ref double source = ref head[k * HeadStride];
                for (int j = k + 1; j < known; j += Step)
                {
                    Vector256<double> sum = Vector256.MultiplyAddEstimate(
                        factor,
                        Vector256.LoadUnsafe(ref source, (nuint)j),
                        Vector256.LoadUnsafe(ref row[0], (nuint)j)
                    );
                    sum.StoreUnsafe(ref row[0], (nuint)j);
                }
            }

            if (i < to)
            {
                double pivot = row[known];
                for (int k = 0; k < known; k++)
                {
                    own[k] = row[k] / pivots[from + k];
                    head[(k * HeadStride) + known] = own[k];
                    pivot -= row[k] * own[k];
                }

                own[known] = 1;
                pivots[i] = pivot;
            }
            else
            {
                Span<double> kept = work.AsSpan((i - to) * PanelWidth, width);
                for (int k = 0; k < width; k++)
                {
                    kept[k] = row[k];
                    own[k] = row[k] / pivots[from + k];
                    panel[(k * panelStride) + i - to] = own[k];
                }
            }
        }
    }

    /// <summary>Takes the panel's product W·Lᵀ from all that is not eliminated yet.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Update(int from, int to)
    {
        int width = to - from;
        int rest = Rows - to;
        int i = 0;
        for (; i + 4 <= rest; i += 4)
        {
            for (int j = 0; j < i + 4; j += 8)
            {
                FourRows(to, i, j, width);
            }
        }

        for (; i < rest; i++)
        {
            for (int j = 0; j <= i; j += 4)
            {
                OneRow(to, i, j, width);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FourRows(int to, int i, int j, int width)
    {
        Vector256<double> a0 = default,
            a1 = default,
            b0 = default,
            b1 = default,
            c0 = default,
            c1 = default,
            d0 = default,
            d1 = default;
        ref double w = ref Unsafe.Add(
            ref MemoryMarshal.GetArrayDataReference(work),
            i * PanelWidth
        );
        ref double l = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(panel), j);
        int panelStride = Stride + 8;
        for (int k = 0; k < width; k++)
        {
            Vector256<double> l0 = Vector256.LoadUnsafe(ref l);
            Vector256<double> l1 = Vector256.LoadUnsafe(ref l, 4);
            Vector256<double> x = Vector256.Create(Unsafe.Add(ref w, k));
            a0 = Vector256.MultiplyAddEstimate(x, l0, a0);
            a1 = Vector256.MultiplyAddEstimate(x, l1, a1);
            x = Vector256.Create(Unsafe.Add(ref w, PanelWidth + k));
            b0 = Vector256.MultiplyAddEstimate(x, l0, b0);
            b1 = Vector256.MultiplyAddEstimate(x, l1, b1);
            x = Vector256.Create(Unsafe.Add(ref w, (2 * PanelWidth) + k));
            c0 = Vector256.MultiplyAddEstimate(x, l0, c0);
            c1 = Vector256.MultiplyAddEstimate(x, l1, c1);
            x = Vector256.Create(Unsafe.Add(ref w, (3 * PanelWidth) + k));
            d0 = Vector256.MultiplyAddEstimate(x, l0, d0);
            d1 = Vector256.MultiplyAddEstimate(x, l1, d1);
            l = ref Unsafe.Add(ref l, panelStride);
        }

        Subtract(to + i, to + j, a0, a1);
        Subtract(to + i + 1, to + j, b0, b1);
        Subtract(to + i + 2, to + j, c0, c1);
        Subtract(to + i + 3, to + j, d0, d1);
    }

    private void OneRow(int to, int i, int j, int width)
    {
        Vector256<double> sum = default;
        int panelStride = Stride + 8;
        for (int k = 0; k < width; k++)
        {
            sum = Vector256.MultiplyAddEstimate(
                Vector256.Create(work[(i * PanelWidth) + k]),
                Vector256.LoadUnsafe(ref panel[(k * panelStride) + j]),
                sum
            );
        }

        ref double target = ref values[((to + i) * Stride) + to + j];
        (Vector256.LoadUnsafe(ref target) - sum).StoreUnsafe(ref target);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Subtract(int i, int j, Vector256<double> low, Vector256<double> high)
    {
        ref double target = ref Unsafe.Add(
            ref MemoryMarshal.GetArrayDataReference(values),
            (i * Stride) + j
        );
        (Vector256.LoadUnsafe(ref target) - low).StoreUnsafe(ref target);
        (Vector256.LoadUnsafe(ref target, 4) - high).StoreUnsafe(ref target, 4);
    }
}

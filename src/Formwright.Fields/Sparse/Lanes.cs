using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Formwright.Fields.Sparse;

/// <summary>
/// Four vectors with their entries side by side: entry i of vector v stands at 4 i + v, so that one pass over a matrix serves all four
/// and the processor works on them at once.
/// </summary>
internal static class Lanes
{
    internal const int Width = 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> Load(ReadOnlySpan<double> lanes, int entry) =>
        Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(lanes.Slice(entry * Width, Width)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static void Store(Vector256<double> value, Span<double> lanes, int entry) =>
        value.StoreUnsafe(ref MemoryMarshal.GetReference(lanes.Slice(entry * Width, Width)));

    internal static void Put(ReadOnlySpan<double> vector, Span<double> lanes, int lane)
    {
        for (int i = 0; i < vector.Length; i++)
        {
            lanes[(i * Width) + lane] = vector[i];
        }
    }

    internal static double[] Take(ReadOnlySpan<double> lanes, int lane)
    {
        double[] vector = new double[lanes.Length / Width];
        for (int i = 0; i < vector.Length; i++)
        {
            vector[i] = lanes[(i * Width) + lane];
        }

        return vector;
    }
}

using System.Numerics;
using System.Runtime.InteropServices;

namespace Formwright.Jigs.Stock.Nesting;

/// <summary>Places along many rows, worked on several at once.</summary>
internal static class Lanes
{
    /// <summary>Moves each place that lies within its row's stretch on to the end of it; whether any was moved.</summary>
    /// <param name="places">For each row a place, mm.</param>
    /// <param name="from">For each row where the stretch starts, from <paramref name="byMm"/>.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="byMm">What is added to all starts and ends, mm.</param>
    public static bool Push(
        Span<double> places,
        ReadOnlySpan<double> from,
        ReadOnlySpan<double> to,
        double byMm
    )
    {
        int rows = places.Length;
        int lanes = Vector<double>.Count;
        bool movedOne = false;
        if (rows < lanes)
        {
            for (int i = 0; i < rows; i++)
            {
                double end = byMm + to[i];
                if (places[i] > byMm + from[i] && places[i] < end)
                {
                    places[i] = end;
                    movedOne = true;
                }
            }

            return movedOne;
        }

        ref double place = ref MemoryMarshal.GetReference(places);
        ref double start = ref MemoryMarshal.GetReference(from[..rows]);
        ref double behind = ref MemoryMarshal.GetReference(to[..rows]);
        Vector<double> by = new(byMm);
        Vector<long> moved = Vector<long>.Zero;
        // The last of them overlap those before: a place that was pushed is not pushed by the same stretch again.
        for (int i = 0; i < rows; i += lanes)
        {
            nuint at = (nuint)Math.Min(i, rows - lanes);
            Vector<double> now = Vector.LoadUnsafe(ref place, at);
            Vector<double> end = by + Vector.LoadUnsafe(ref behind, at);
            Vector<long> meets =
                Vector.GreaterThan(now, by + Vector.LoadUnsafe(ref start, at))
                & Vector.LessThan(now, end);
            Vector.ConditionalSelect(meets, end, now).StoreUnsafe(ref place, at);
            moved |= meets;
        }

        return moved != Vector<long>.Zero;
    }

    /// <summary>The least of all places; infinite if there are none.</summary>
    public static double Least(ReadOnlySpan<double> places)
    {
        double least = double.PositiveInfinity;
        int lanes = Vector<double>.Count;
        int i = 0;
        if (places.Length >= lanes)
        {
            Vector<double> leasts = new(double.PositiveInfinity);
            ref double place = ref MemoryMarshal.GetReference(places);
            for (; i + lanes <= places.Length; i += lanes)
            {
                leasts = Vector.Min(leasts, Vector.LoadUnsafe(ref place, (nuint)i));
            }

            for (int lane = 0; lane < lanes; lane++)
            {
                least = Math.Min(least, leasts[lane]);
            }
        }

        for (; i < places.Length; i++)
        {
            least = Math.Min(least, places[i]);
        }

        return least;
    }
}

using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Formwright.Instrument.Tolerances;

/// <summary>
/// Four xoshiro256++ generators side by side (Blackman and Vigna, ACM Trans. Math. Softw. 47, 2021), each started by SplitMix64 from seed and
/// number of the stream. The same seed and number give the same values on every machine, whatever its vector width.
/// </summary>
internal sealed class RandomStream
{
    private const int BufferLength = 256;
    private readonly ulong[] buffer = new ulong[BufferLength];
    private int next = BufferLength;
    private Vector256<ulong> s0;
    private Vector256<ulong> s1;
    private Vector256<ulong> s2;
    private Vector256<ulong> s3;

    public RandomStream(ulong seed, ulong number)
    {
        ulong state = Mix(seed + 0x9E3779B97F4A7C15) ^ Mix((number * 0xD1342543DE82EF95) + 1);
        ulong[] words = new ulong[16];
        for (int i = 0; i < words.Length; i++)
        {
            state += 0x9E3779B97F4A7C15;
            words[i] = Mix(state);
        }

        s0 = Vector256.Create(words[0], words[1], words[2], words[3]);
        s1 = Vector256.Create(words[4], words[5], words[6], words[7]);
        s2 = Vector256.Create(words[8], words[9], words[10], words[11]);
        s3 = Vector256.Create(words[12], words[13], words[14], words[15]);
    }

    /// <summary>Fills with low + width · u, u uniform in [0, 1) on 2⁻⁵² steps. The length is a multiple of 4.</summary>
    public void FillUniform(Span<double> values, double low, double width)
    {
        Span<Vector256<double>> four = MemoryMarshal.Cast<double, Vector256<double>>(values);
        Vector256<double> scale = Vector256.Create(width);
        Vector256<double> shift = Vector256.Create(low - width);
        Vector256<ulong> one = Vector256.Create(0x3FF0000000000000UL);

        // Local copies of the state stay in registers.
        (Vector256<ulong> a, Vector256<ulong> b, Vector256<ulong> c, Vector256<ulong> d) = (
            s0,
            s1,
            s2,
            s3
        );
        for (int i = 0; i < four.Length; i++)
        {
            Vector256<ulong> word = Step(ref a, ref b, ref c, ref d);
            Vector256<double> between1And2 = ((word >> 12) | one).AsDouble();
            four[i] = (between1And2 * scale) + shift;
        }

        (s0, s1, s2, s3) = (a, b, c, d);
    }

    /// <summary>One random word.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public ulong Next()
    {
        if (next == BufferLength)
        {
            Refill();
        }

        return buffer[next++];
    }

    private void Refill()
    {
        Span<Vector256<ulong>> four = MemoryMarshal.Cast<ulong, Vector256<ulong>>(buffer.AsSpan());
        for (int i = 0; i < four.Length; i++)
        {
            four[i] = Step(ref s0, ref s1, ref s2, ref s3);
        }

        next = 0;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<ulong> Step(
        ref Vector256<ulong> s0,
        ref Vector256<ulong> s1,
        ref Vector256<ulong> s2,
        ref Vector256<ulong> s3
    )
    {
        Vector256<ulong> sum = s0 + s3;
        Vector256<ulong> result = ((sum << 23) | (sum >> 41)) + s0;
        Vector256<ulong> t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = (s3 << 45) | (s3 >> 19);
        return result;
    }

    // SplitMix64 (Steele, Lea and Flood, OOPSLA 2014).
    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}

using System.Buffers.Binary;

namespace Formwright.Instrument.Boards;

/// <summary>
/// Reads uncompressed WAV files (RIFF/WAVE: PCM of 8, 16, 24 or 32 bits, IEEE float of 32 or 64 bits, plain or extensible header), as
/// any recorder writes them. The file is taken as hostile: sizes in it are never trusted beyond the bytes that are there, and every
/// fault is an answer, not an exception. Of several channels the loudest is taken.
/// </summary>
public static class WavReader
{
    /// <summary>Largest file that is read, bytes.</summary>
    public const int MaxBytes = 64 * 1024 * 1024;

    private const int MaxChannels = 8;
    private const int MinRateHz = 1000;
    private const int MaxRateHz = 400_000;
    private const int Pcm = 1;
    private const int IeeeFloat = 3;
    private const int Extensible = 0xFFFE;

    /// <summary>Reads a file from disk.</summary>
    /// <exception cref="IOException">The disk failed.</exception>
    public static WavReading Load(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        return new FileInfo(path).Length > MaxBytes
            ? Failed(WavFault.TooLarge)
            : Read(File.ReadAllBytes(path));
    }

    /// <summary>Reads the bytes of a file.</summary>
    public static WavReading Read(ReadOnlySpan<byte> file)
    {
        if (file.Length > MaxBytes)
        {
            return Failed(WavFault.TooLarge);
        }

        if (
            file.Length < 12
            || !file[..4].SequenceEqual("RIFF"u8)
            || !file[8..12].SequenceEqual("WAVE"u8)
        )
        {
            return Failed(WavFault.NotWav);
        }

        Format? format = null;
        int at = 12;
        while (at + 8 <= file.Length)
        {
            uint size = BinaryPrimitives.ReadUInt32LittleEndian(file[(at + 4)..]);
            ReadOnlySpan<byte> name = file.Slice(at, 4);
            at += 8;
            int length = (int)Math.Min(size, (uint)(file.Length - at));
            if (name.SequenceEqual("fmt "u8))
            {
                format = Format.Read(file.Slice(at, length));
            }
            else if (name.SequenceEqual("data"u8))
            {
                return format is { } known
                    ? Samples(file.Slice(at, length), known)
                    : Failed(WavFault.BadFormat);
            }

            // Chunks are padded to an even length.
            at += length + (length & 1);
        }

        return Failed(format is null ? WavFault.BadFormat : WavFault.TooShort);
    }

    private static WavReading Samples(ReadOnlySpan<byte> data, Format format)
    {
        if (
            format.Channels is < 1 or > MaxChannels
            || format.RateHz is < MinRateHz or > MaxRateHz
            || format.Bits % 8 != 0
        )
        {
            return Failed(WavFault.BadFormat);
        }

        bool known = format.Kind switch
        {
            Pcm => format.Bits is 8 or 16 or 24 or 32,
            IeeeFloat => format.Bits is 32 or 64,
            _ => false,
        };
        if (!known)
        {
            return Failed(WavFault.Compressed);
        }

        int bytes = format.Bits / 8;
        int frame = bytes * format.Channels;
        int count = data.Length / frame;
        if (count < format.RateHz / 10)
        {
            return Failed(WavFault.TooShort);
        }

        float[]? loudest = null;
        double most = 0;
        for (int channel = 0; channel < format.Channels; channel++)
        {
            float[] samples = new float[count];
            double energy = 0;
            for (int i = 0; i < count; i++)
            {
                double value = Sample(data.Slice((i * frame) + (channel * bytes), bytes), format);
                samples[i] = (float)value;
                energy += value * value;
            }

            if (!double.IsFinite(energy))
            {
                return Failed(WavFault.NotNumbers);
            }

            if (energy > most)
            {
                (loudest, most) = (samples, energy);
            }
        }

        return loudest is null
            ? Failed(WavFault.Silent)
            : new WavReading(new Recording(loudest, format.RateHz), WavFault.None);
    }

    private static double Sample(ReadOnlySpan<byte> at, Format format) =>
        (format.Kind, format.Bits) switch
        {
            (Pcm, 8) => (at[0] - 128) / 128.0,
            (Pcm, 16) => BinaryPrimitives.ReadInt16LittleEndian(at) / 32768.0,
            (Pcm, 24) => ((at[0] << 8) | (at[1] << 16) | (at[2] << 24)) / 2147483648.0,
            (Pcm, 32) => BinaryPrimitives.ReadInt32LittleEndian(at) / 2147483648.0,
            (IeeeFloat, 32) => Bounded(BinaryPrimitives.ReadSingleLittleEndian(at)),
            _ => Bounded(BinaryPrimitives.ReadDoubleLittleEndian(at)),
        };

    // A float file may go over 1; what is absurd counts as no number.
    private static double Bounded(double value) => Math.Abs(value) <= 1e6 ? value : double.NaN;

    private static WavReading Failed(WavFault fault) => new(null, fault);

    private readonly record struct Format(int Kind, int Channels, int RateHz, int Bits)
    {
        internal static Format? Read(ReadOnlySpan<byte> chunk)
        {
            if (chunk.Length < 16)
            {
                return null;
            }

            int kind = BinaryPrimitives.ReadUInt16LittleEndian(chunk);
            if (kind == Extensible && chunk.Length >= 26)
            {
                // The first two bytes of the sub-format's GUID are the format code.
                kind = BinaryPrimitives.ReadUInt16LittleEndian(chunk[24..]);
            }

            uint rate = BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]);
            return new Format(
                kind,
                BinaryPrimitives.ReadUInt16LittleEndian(chunk[2..]),
                rate > MaxRateHz ? -1 : (int)rate,
                BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..])
            );
        }
    }
}

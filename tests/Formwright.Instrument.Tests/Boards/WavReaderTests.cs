using System.Buffers.Binary;
using CsCheck;
using Formwright.Instrument.Boards;
using Formwright.Testing;
using NWaves.Audio;
using NWaves.Signals;
using Xunit;

namespace Formwright.Instrument.Tests.Boards;

public sealed class WavReaderTests
{
    private static readonly float[] Tone =
    [
        .. Enumerable.Range(0, 8000).Select(i => 0.5f * MathF.Sin(i * 0.3f)),
    ];

    // Written by the general-purpose library NWaves, not by our own code.
    [Theory]
    [InlineData(8, 0.01)]
    [InlineData(16, 1e-4)]
    [InlineData(24, 1e-6)]
    [InlineData(32, 1e-6)]
    public void ReadsWhatALibraryWrites(short bits, double tolerance)
    {
        byte[] file = new WaveFile(new DiscreteSignal(8000, Tone), bits).GetBytes();
        WavReading reading = WavReader.Read(file);
        Assert.True(reading.Succeeded, reading.Fault.ToString());
        Assert.Equal(8000, reading.Recording.RateHz);
        Assert.Equal(Tone.Length, reading.Recording.Samples.Count);
        for (int i = 0; i < Tone.Length; i++)
        {
            Assert.Equal(Tone[i], reading.Recording.Samples[i], tolerance);
        }
    }

    [Fact]
    public void TakesTheLouderOfTwoChannels()
    {
        DiscreteSignal quiet = new(8000, [.. Tone.Select(x => x * 0.1f)]);
        byte[] file = new WaveFile([quiet, new DiscreteSignal(8000, Tone)], 16).GetBytes();
        Assert.Equal(Tone[77], WavReader.Read(file).Recording!.Samples[77], 1e-4);
    }

    [Fact]
    public void ReadsFloatsBehindAnExtensibleHeaderAndOtherChunks()
    {
        byte[] data = new byte[Tone.Length * 4];
        for (int i = 0; i < Tone.Length; i++)
        {
            BinaryPrimitives.WriteSingleLittleEndian(data.AsSpan(4 * i), Tone[i]);
        }

        byte[] format = new byte[40];
        BinaryPrimitives.WriteUInt16LittleEndian(format, 0xFFFE);
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(2), 1);
        BinaryPrimitives.WriteUInt32LittleEndian(format.AsSpan(4), 8000);
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(14), 32);
        format[24] = 3;
        byte[] file = File(("LIST", new byte[7]), ("fmt ", format), ("data", data));
        Assert.Equal(Tone[4321], WavReader.Read(file).Recording!.Samples[4321]);
    }

    [Fact]
    public void ADataSizeThatLiesIsCutToTheFile()
    {
        byte[] file = new WaveFile(new DiscreteSignal(8000, Tone), 16).GetBytes();
        int at = file.AsSpan().IndexOf("data"u8) + 4;
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(at), uint.MaxValue);
        Assert.Equal(Tone.Length, WavReader.Read(file).Recording!.Samples.Count);
    }

    [Fact]
    public void EveryFaultIsAnAnswer()
    {
        byte[] pcm = [1, 0, 1, 0, 0x40, 0x1F, 0, 0, 0, 0, 0, 0, 2, 0, 16, 0];
        byte[] adpcm = [.. pcm];
        adpcm[0] = 2;
        byte[] noRate = [.. pcm];
        noRate[4] = noRate[5] = 0;
        byte[] floats = [.. pcm];
        floats[0] = 3;
        floats[14] = 32;
        byte[] nan = new byte[8000 * 4];
        BinaryPrimitives.WriteSingleLittleEndian(nan.AsSpan(400), float.NaN);
        (byte[] File, WavFault Fault)[] cases =
        [
            ([], WavFault.NotWav),
            ("RIFF....WAVX"u8.ToArray(), WavFault.NotWav),
            (File(("data", new byte[20000])), WavFault.BadFormat),
            (File(("fmt ", [1, 0, 1]), ("data", new byte[20000])), WavFault.BadFormat),
            (File(("fmt ", noRate), ("data", new byte[20000])), WavFault.BadFormat),
            (File(("fmt ", adpcm), ("data", new byte[20000])), WavFault.Compressed),
            (File(("fmt ", pcm)), WavFault.TooShort),
            (File(("fmt ", pcm), ("data", new byte[100])), WavFault.TooShort),
            (File(("fmt ", pcm), ("data", new byte[20000])), WavFault.Silent),
            (File(("fmt ", floats), ("data", nan)), WavFault.NotNumbers),
        ];
        foreach ((byte[] file, WavFault fault) in cases)
        {
            WavReading reading = WavReader.Read(file);
            Assert.Equal(fault, reading.Fault);
            Assert.NotEqual("", reading.Message);
        }
    }

    // Any bytes, and any damage to a good file: an answer, never an exception.
    [Fact]
    public void NoBytesMakeItThrow()
    {
        byte[] good = new WaveFile(new DiscreteSignal(8000, Tone[..900]), 16).GetBytes();
        Gen.Select(Gen.Int[0, 60], Gen.Byte, Gen.Int[0, good.Length])
            .Holds(
                (at, value, length) =>
                {
                    byte[] bad = [.. good];
                    bad[at] = value;
                    WavReading reading = WavReader.Read(bad.AsSpan(0, length));
                    return reading.Succeeded == (reading.Fault == WavFault.None);
                },
                iter: 20000
            );
        Gen.Byte.Array[0, 300]
            .Holds(bytes => !WavReader.Read([.. "RIFF0000WAVE"u8, .. bytes]).Succeeded, iter: 5000);
    }

    private static byte[] File(params (string Name, byte[] Bytes)[] chunks)
    {
        using MemoryStream stream = new();
        stream.Write("RIFF0000WAVE"u8);
        Span<byte> size = stackalloc byte[4];
        foreach ((string name, byte[] bytes) in chunks)
        {
            stream.Write(System.Text.Encoding.ASCII.GetBytes(name));
            BinaryPrimitives.WriteInt32LittleEndian(size, bytes.Length);
            stream.Write(size);
            stream.Write(bytes);
            if (bytes.Length % 2 == 1)
            {
                stream.WriteByte(0);
            }
        }

        return stream.ToArray();
    }
}

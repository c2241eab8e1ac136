using System.Text;
using Formwright.Design;
using Xunit;

namespace Formwright.Cli.Tests;

public sealed class TapTests : IDisposable
{
    private const string Board =
        "\n[board_test] # this board\nlength = 550\nwidth = 200\nthickness = 4\nmass = 180\n";

    private readonly Shell shell = new();

    public void Dispose() => shell.Dispose();

    [Fact]
    public void The_note_of_a_recording_goes_into_the_design_and_its_spectrum_onto_a_sheet()
    {
        shell.Write("heron.toml", DesignModels.TextOf("heron") + Board);
        File.WriteAllBytes(shell.PathOf("tap.wav"), Wav((83.1, 1, 6), (171.4, 0.4, 12)));
        Outcome outcome = Shell.Here(
            "--language",
            "en",
            "tap",
            shell.PathOf("heron.toml"),
            "--recording",
            shell.PathOf("tap.wav"),
            "--mode",
            "long",
            "--write",
            "--sheet",
            shell.PathOf("tap.pdf")
        );
        Assert.Equal(0, outcome.Status);
        Assert.Contains("83.1 Hz", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("171.4 Hz", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("GPa along the grain", outcome.Out, StringComparison.Ordinal);
        string text = File.ReadAllText(shell.PathOf("heron.toml"));
        Assert.Contains("# this board", text, StringComparison.Ordinal);
        Assert.Equal(83.1, DesignText.Parse(text, "x").Design!.BoardTest.TapLongHz);
        Assert.Equal(
            "%PDF"u8.ToArray(),
            File.ReadAllBytes(shell.PathOf("tap.pdf")).Take(4).ToArray()
        );

        // The note that the maker means, where the loudest is another.
        Outcome other = Shell.Here(
            "--language",
            "en",
            "tap",
            shell.PathOf("heron.toml"),
            "--recording",
            shell.PathOf("tap.wav"),
            "--mode",
            "cross",
            "--note",
            "165",
            "--write"
        );
        Assert.Equal(0, other.Status);
        text = File.ReadAllText(shell.PathOf("heron.toml"));
        Assert.Equal(171.4, DesignText.Parse(text, "x").Design!.BoardTest.TapCrossHz);
    }

    [Fact]
    public void What_cannot_be_is_said_and_nothing_is_written()
    {
        string text = DesignModels.TextOf("heron");
        shell.Write("heron.toml", text);
        shell.Write("noise.wav", "no recording");
        File.WriteAllBytes(shell.PathOf("tap.wav"), Wav((83.1, 1, 6)));
        (string Expected, string[] More)[] cases =
        [
            ("There is no recording", ["--recording", shell.PathOf("absent.wav")]),
            ("noise.wav", ["--recording", shell.PathOf("noise.wav")]),
            ("needs --mode", ["--recording", shell.PathOf("tap.wav"), "--write"]),
            ("sideways", ["--recording", shell.PathOf("tap.wav"), "--mode", "sideways"]),
            // The design has no size of the board: the note alone says nothing.
            ("length", ["--recording", shell.PathOf("tap.wav"), "--mode", "long", "--write"]),
        ];
        foreach ((string expected, string[] more) in cases)
        {
            Outcome outcome = Shell.Here([
                "--language",
                "en",
                "tap",
                shell.PathOf("heron.toml"),
                .. more,
            ]);
            Assert.Equal(2, outcome.Status);
            Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
        }

        Assert.Equal(text, File.ReadAllText(shell.PathOf("heron.toml")));
    }

    // 16 bits, one channel, two seconds of damped notes.
    private static byte[] Wav(params (double Hz, double Amplitude, double DecayPerS)[] notes)
    {
        const int Rate = 22050;
        using MemoryStream stream = new();
        using BinaryWriter writer = new(stream, Encoding.ASCII);
        int bytes = 2 * 2 * Rate;
        writer.Write("RIFF"u8);
        writer.Write(36 + bytes);
        writer.Write("WAVEfmt "u8);
        writer.Write(16);
        writer.Write((short)1);
        writer.Write((short)1);
        writer.Write(Rate);
        writer.Write(2 * Rate);
        writer.Write((short)2);
        writer.Write((short)16);
        writer.Write("data"u8);
        writer.Write(bytes);
        for (int i = 0; i < 2 * Rate; i++)
        {
            double t = (double)i / Rate;
            double value = notes.Sum(note =>
                note.Amplitude * Math.Exp(-note.DecayPerS * t) * Math.Cos(2 * Math.PI * note.Hz * t)
            );
            writer.Write((short)(value * 12000));
        }

        return stream.ToArray();
    }
}

using System.Text;
using Xunit;

namespace Formwright.Design.Tests;

/// <summary>What can be wrong with a file before a word of it is read.</summary>
public sealed class FileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("formwright-design").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_missing_file_is_a_diagnostic() =>
        Assert.Equal($"There is no file '{PathOf("none.toml")}'.", Only(PathOf("none.toml")));

    [Fact]
    public void A_file_in_a_missing_folder_is_a_diagnostic() =>
        Assert.StartsWith(
            "There is no file",
            Only(PathOf("none/none.toml")),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_folder_is_a_diagnostic() =>
        Assert.EndsWith("is a folder; a design is a file.", Only(folder), StringComparison.Ordinal);

    [Fact]
    public void Four_gigabytes_are_refused_unread()
    {
        using (FileStream sparse = File.Create(PathOf("huge.toml")))
        {
            sparse.SetLength(4L << 30);
        }

        Assert.Equal(
            "The file is larger than 1000000 bytes; no design is.",
            Only(PathOf("huge.toml"))
        );
    }

    [Fact]
    public void A_device_without_end_is_refused()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "no /dev/zero here");
        Assert.Equal("The file is larger than 1000000 bytes; no design is.", Only("/dev/zero"));
    }

    [Fact]
    public void Bytes_that_are_no_text_are_a_diagnostic()
    {
        byte[] noise = new byte[4096];
        new Random(1).NextBytes(noise);
        Assert.Equal("The file is not text (UTF-8), so it is no design.", Only(Written(noise)));
    }

    [Fact]
    public void Utf16_is_no_utf8() =>
        Assert.Equal(
            "The file is not text (UTF-8), so it is no design.",
            Only(
                Written([.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Reading.Whole)])
            )
        );

    [Fact]
    public void A_byte_order_mark_shifts_no_column()
    {
        byte[] bytes =
        [
            .. Encoding.UTF8.Preamble,
            .. Encoding.UTF8.GetBytes("x = 1\n" + Reading.Whole),
        ];
        DesignReading reading = DesignText.Load(Written(bytes));
        Assert.Equal(
            (1, 1),
            (reading.Diagnostics.Single().Line, reading.Diagnostics.Single().Column)
        );
    }

    [Fact]
    public void Line_ends_of_windows_read_the_same()
    {
        string windows = Reading.Whole.Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.True(DesignText.Parse(windows, "f").Succeeded);
        Assert.Equal(
            ["11:1: 'x' is no key of a design. Here one can write: at, radius."],
            Shortened(windows + "x = 1\r\n")
        );
    }

    [Fact]
    public void A_very_long_line_is_read()
    {
        string text = "# " + new string('x', 900_000) + "\n" + Reading.Whole;
        Assert.True(DesignText.Parse(text, "f").Succeeded);
        string tooLong = $"[instrument]\nscale = 650\nname = \"{new string('x', 900_000)}\"\n";
        Assert.Contains(
            Reading.Faults(tooLong),
            fault => fault.StartsWith("3:8: ", StringComparison.Ordinal) && fault.Length < 200
        );
    }

    [Fact]
    public void More_than_a_megabyte_of_text_is_refused() =>
        Assert.Equal(
            ["1:1: The file is larger than 1000000 bytes; no design is."],
            Reading.Faults(new string('#', 1_000_001))
        );

    private static string[] Shortened(string text) =>
        [
            .. Reading
                .Faults(text)
                .Select(f => f.Replace("soundhole.", "", StringComparison.Ordinal)),
        ];

    private static string Only(string path)
    {
        DesignReading reading = DesignText.Load(path);
        Assert.False(reading.Succeeded);
        Assert.Equal(
            (1, 1),
            (reading.Diagnostics.Single().Line, reading.Diagnostics.Single().Column)
        );
        return reading.Diagnostics.Single().Message;
    }

    private string Written(byte[] bytes)
    {
        File.WriteAllBytes(PathOf("f.toml"), bytes);
        return PathOf("f.toml");
    }

    private string PathOf(string name) => Path.Combine(folder, name);
}

using System.Diagnostics;
using System.Text;
using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Trace.Files;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>What must not be read, or can't be, ends in one clear diagnostic with its place, soon, and fetches nothing.</summary>
public class BadInputTests
{
    private const string Svg =
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='100mm' viewBox='0 0 100 100'>";

    [Theory]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY a 'x'>]><svg xmlns='http://www.w3.org/2000/svg'/>",
        "entities"
    )]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><svg xmlns='http://www.w3.org/2000/svg'><path d='&x;'/></svg>",
        "entities"
    )]
    [InlineData(
        "<!DOCTYPE lolz [<!ENTITY a 'aaaa'><!ENTITY b '&a;&a;&a;&a;'>]>\n<svg xmlns='http://www.w3.org/2000/svg'>&b;</svg>",
        "entities"
    )]
    [InlineData(
        "<!DOCTYPE svg SYSTEM 'http://example.invalid/x.dtd'><svg xmlns='http://www.w3.org/2000/svg'><path d='&x;'/></svg>",
        "own rules"
    )]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0", "own rules")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><g></svg>", "own rules")]
    [InlineData("<html><body/></html>", "no SVG")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>", "no curve")]
    [InlineData(
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 0 9'><path d='M0 0L1 1'/></svg>",
        "viewBox"
    )]
    [InlineData(
        "<svg xmlns='http://www.w3.org/2000/svg' width='0mm' viewBox='0 0 9 9'><path d='M0 0L1 1'/></svg>",
        "scale"
    )]
    [InlineData("<?xml version='1.0' encoding='klingon'?><svg/>", "encoding")]
    public void Svg_files(string text, string word)
    {
        Diagnostic diagnostic = Refused(Encoding.UTF8.GetBytes(text), "x.svg");
        Assert.Contains(word, diagnostic.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("<path d='L5 5'/>", "character 1")]
    [InlineData("<path d='M0 0 X5 5'/>", "character 6")]
    [InlineData("<path d='M0 0 L5'/>", "character")]
    [InlineData("<path d='M0 0 A5 5 0 2 0 9 9'/>", "character")]
    [InlineData("<path d='M0 0 L1e999 0'/>", "character")]
    [InlineData("<path transform='turn(3)' d='M0 0L1 1'/>", "transform")]
    [InlineData("<path transform='rotate(3,4)' d='M0 0L1 1'/>", "transform")]
    [InlineData("<circle r='x'/>", "circle")]
    [InlineData("<polygon points='1 2 3'/>", "polygon")]
    [InlineData("<path d='M0 0L1e9 0'/>", "farther")]
    [InlineData("<g id='a'><use href='#a'/></g>", "deep")]
    [InlineData("<g id='a'><use href='#b'/></g><g id='b'><use xlink:href='#a'/></g>", "deep")]
    public void Svg_elements_name_their_line(string element, string word)
    {
        Diagnostic diagnostic = Refused(
            Encoding.UTF8.GetBytes($"{Svg}\n\n{element}</svg>"),
            "x.svg"
        );
        Assert.Contains(word, diagnostic.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(3, diagnostic.Line);
    }

    [Fact]
    public void A_script_is_not_run_and_a_link_is_not_followed()
    {
        TraceReading reading = Given.Read(
            $"{Svg}<script>alert(1)</script><image href='http://example.invalid/a.png'/><use href='http://example.invalid/b.svg#c'/><path d='M0 0L1 1'/></svg>",
            "x.svg"
        );
        Assert.True(reading.Succeeded);
        Assert.Equal(3, reading.File.Notes.Count);
        Assert.Single(reading.File.Curves);
    }

    [Fact]
    public void Copies_of_copies_are_bounded()
    {
        StringBuilder text = new($"{Svg}<path id='a0' d='M0 0L1 1'/>");
        for (int i = 1; i < 12; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"<g id='a{i}'>");
            for (int k = 0; k < 10; k++)
            {
                text.Append(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"<use href='#a{i - 1}'/>"
                );
            }

            text.Append("</g>");
        }

        Diagnostic diagnostic = Refused(
            Encoding.UTF8.GetBytes(text.Append("</svg>").ToString()),
            "x.svg"
        );
        Assert.Contains("elements", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Deep_and_wide_svg_files_are_bounded()
    {
        string deep = Svg + string.Concat(Enumerable.Repeat("<g>", 100_000));
        Assert.Contains(
            "deep",
            Refused(Encoding.UTF8.GetBytes(deep), "x.svg").Message,
            StringComparison.Ordinal
        );
        string wide = Svg + string.Concat(Enumerable.Repeat("<g/>", 300_000)) + "</svg>";
        Assert.Contains(
            "elements",
            Refused(Encoding.UTF8.GetBytes(wide), "x.svg").Message,
            StringComparison.Ordinal
        );
        string much =
            Svg
            + "<path d='M0 0"
            + string.Concat(Enumerable.Repeat("L1 1L0 0", 300_000))
            + "'/></svg>";
        Assert.Contains(
            "pieces",
            Refused(Encoding.UTF8.GetBytes(much), "x.svg").Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_dxf_that_is_cut_off_anywhere_says_so()
    {
        string whole = File.ReadAllText(Given.File("polyline-r12.dxf"));
        Random random = new(1);
        for (int i = 0; i < 60; i++)
        {
            int at = random.Next(20, whole.Length - 8);
            Diagnostic diagnostic = Refused(Encoding.UTF8.GetBytes(whole[..at]), "x.dxf");
            Assert.InRange(diagnostic.Line, 1, whole[..at].Count(c => c == '\n') + 2);
        }
    }

    [Theory]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\n10\nabc\n", "number", 8)]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\nabc\n1\n", "group code", 7)]
    [InlineData(
        "0\nSECTION\n2\nENTITIES\n0\nSPLINE\n71\n3\n10\n0\n20\n0\n0\nENDSEC\n0\nEOF\n",
        "spline",
        6
    )]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n", "no curve", 1)]
    [InlineData(
        "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n10\n1e300\n40\n1\n0\nENDSEC\n0\nEOF\n",
        "farther",
        6
    )]
    [InlineData(
        "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nA\n0\nINSERT\n2\nA\n0\nENDBLK\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nINSERT\n2\nA\n0\nENDSEC\n0\nEOF\n",
        "deep",
        10
    )]
    public void Dxf_faults(string text, string word, int line)
    {
        Diagnostic diagnostic = Refused(Encoding.UTF8.GetBytes(text), "x.dxf");
        Assert.Contains(word, diagnostic.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(line, diagnostic.Line);
    }

    [Fact]
    public void A_binary_dxf_is_told_apart()
    {
        byte[] binary = [.. "AnyProgram Binary DXF\r\n\u001a\0"u8, 0, 0, 1, 2];
        // The mark of the format stands near the beginning, whatever the program's name.
        byte[] shorter = [.. "X Binary DXF\r\n\u001a\0"u8, 0, 0, 1, 2];
        Assert.Contains(
            "binary",
            Refused(shorter, "x.dxf").Message,
            StringComparison.OrdinalIgnoreCase
        );
        Assert.Contains(
            "binary",
            Refused(binary, "x.dxf").Message,
            StringComparison.OrdinalIgnoreCase
        );
    }

    [Theory]
    [InlineData("", "no figures", 1)]
    [InlineData("# only a remark\n", "no figures", 1)]
    [InlineData("1;2\n3;x\n", "no number", 2)]
    [InlineData("1;2\n1.234,5;3\n", "no number", 2)]
    [InlineData("1;2\n3\n", "columns", 2)]
    [InlineData("12,5\n13,5\n", "", 0)]
    [InlineData("1,5,2,5\n3,5,4,5\n", "part columns", 1)]
    [InlineData("station;half_width\n0;0\n10;5\n10;6\n", "after the one before", 4)]
    [InlineData("1;2\n", "no", 1)]
    [InlineData("5\n6\n", "column", 1)]
    public void Csv_faults(string text, string word, int line)
    {
        TraceReading reading = Given.Read(text, "x.csv");
        if (line == 0)
        {
            // 12,5 alone on its line: two columns of whole numbers.
            Assert.True(reading.Succeeded);
            return;
        }

        Diagnostic diagnostic = Assert.Single(reading.Diagnostics);
        Assert.Contains(word, diagnostic.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(line, diagnostic.Line);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        Assert.Contains("text", Refused([1, 2, 0, 3], "x").Message, StringComparison.Ordinal);
        Assert.Contains(
            "no file",
            TraceReader.Load("/nowhere/at/all.svg").Diagnostics[0].Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Open_crossing_short_and_doubled_outlines()
    {
        Outline model = Given.Model("heron");
        Random random = new(1);
        Point[] treble = Given.Half(model.Half, 1, 0, random);
        TraceFile whole = Given.Whole(treble, treble);
        Point[] all = ((Geometry.PointsPiece)whole.Curves[0].Pieces[0]).Places.ToArray();

        Assert.Contains(
            "open",
            Fails(Given.OfPoints(all[..^60], isClosed: false)),
            StringComparison.Ordinal
        );
        Assert.True(
            Tracing
                .Run(
                    Given.OfPoints(all[..^60], isClosed: false),
                    new TraceOptions { JoinGapMm = 70 }
                )
                .Succeeded
        );

        Point[] crossed = (Point[])all.Clone();
        Array.Reverse(crossed, 200, 500);
        Assert.Contains(
            "crosses itself",
            Fails(Given.OfPoints(crossed, isClosed: true)),
            StringComparison.Ordinal
        );

        Assert.Contains(
            "points",
            Fails(Given.OfPoints(all[..3], isClosed: false)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "points",
            Fails(
                Given.OfPoints(
                    [new(0, 0), new(100, 80), new(200, 0), new(100, -80)],
                    isClosed: true
                )
            ),
            StringComparison.Ordinal
        );

        // Every point twice, and some a hundred times.
        Point[] doubled =
        [
            .. all.SelectMany((p, i) => Enumerable.Repeat(p, i % 50 == 0 ? 100 : 2)),
        ];
        TraceResult trace = Given.Run(Given.OfPoints(doubled, isClosed: true));
        Assert.InRange(Given.Apart(trace.Fair, model), 0, 0.06);
    }

    [Fact]
    public void Points_in_no_order_end_soon_in_a_diagnostic()
    {
        Random random = new(2);
        Point[] points =
        [
            .. Enumerable
                .Range(0, 3000)
                .Select(_ => new Point(random.NextDouble() * 400, random.NextDouble() * 300)),
        ];
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Single(
            Tracing.Run(Given.OfPoints(points, isClosed: true), new TraceOptions()).Diagnostics
        );
        // Bounded, not measured: half a minute would be a hang.
        Assert.True(watch.Elapsed < TimeSpan.FromMinutes(2));
    }

    [Fact]
    public void A_mistake_of_the_caller_throws()
    {
        TraceFile file = Given.OfPoints([new(0, 0), new(1, 1)], isClosed: false);
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Tracing.Run(file, new TraceOptions { ToleranceMm = 0 })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Tracing.Run(file, new TraceOptions { SmallestBumpMm = double.NaN })
        );
        Assert.Throws<ArgumentException>(() =>
            Tracing.Run(file, new TraceOptions { Centreline = new(new(1, 1), new(1, 1)) })
        );
    }

    private static string Fails(TraceFile file) =>
        Assert.Single(Tracing.Run(file, new TraceOptions()).Diagnostics).Message;

    private static Diagnostic Refused(byte[] bytes, string name)
    {
        TraceReading reading = TraceReader.Read(bytes, name);
        Assert.False(reading.Succeeded);
        return Assert.Single(reading.Diagnostics);
    }

    // Found by fuzzing: what a file quotes came out as it stood, control characters and all.
    [Theory]
    [InlineData("x.csv", "x;y\n1;2\n\u001b[31m;4\n5;6\n")]
    [InlineData("x.csv", "x;y\n1;2\na\u2028b\u0085;4\n5;6\n")]
    [InlineData("x.dxf", "  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n\u001b\n")]
    [InlineData("x.svg", "<svg><path d=\"M0 0 L1 1\" transform=\"tu\u0085rn(\"/></svg>")]
    public void What_is_quoted_can_not_steer_a_terminal(string name, string text)
    {
        TraceReading reading = Given.Read(text, name);
        string message = Assert.Single(reading.Diagnostics).ToString();
        Assert.DoesNotContain(message, char.IsControl);
        Assert.DoesNotContain('\u2028', message);
    }

    // Found by fuzzing: only the ends and the middle of a piece were looked at, and a circle that a block stretches along one axis is near there.
    [Fact]
    public void A_circle_that_is_stretched_out_of_reach_is_refused()
    {
        string block =
            "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nC\n0\nCIRCLE\n40\n1\n0\nENDBLK\n0\nENDSEC\n";
        string entities = "0\nSECTION\n2\nENTITIES\n0\nINSERT\n2\nC\n42\n1e9\n0\nENDSEC\n0\nEOF\n";
        TraceReading reading = Given.Read(block + entities, "x.dxf");
        Assert.False(reading.Succeeded);
        Assert.Single(reading.Diagnostics);
    }

    // Found by fuzzing: the weights cancelled at the end, and the place there was no number.
    [Fact]
    public void Weights_of_very_different_size_give_finite_places()
    {
        string spline =
            "0\nSPLINE\n71\n2\n40\n0\n40\n0\n40\n0\n40\n1\n40\n1\n40\n1\n41\n1\n41\n2e16\n41\n1\n10\n0\n20\n0\n10\n1\n20\n5\n10\n2\n20\n0\n";
        TraceReading reading = Given.Read(
            $"0\nSECTION\n2\nENTITIES\n{spline}0\nENDSEC\n0\nEOF\n",
            "x.dxf"
        );
        Assert.True(reading.Succeeded);
        Assert.Equal(new Point(2, 0), reading.File.Curves[0].Pieces[0].End);
    }

    // Found by fuzzing: no piece was long enough for one more node, and the search went on for ever.
    [Fact]
    public void A_tolerance_that_no_chain_meets_ends()
    {
        Outline model = Given.Model("plover");
        Point[] half = Given.Half(model.Half, 3, 0.05, new Random(1));
        TraceResult trace = Given.Run(
            Given.OfPoints(half, isClosed: false),
            new TraceOptions { ToleranceMm = 1e-6 }
        );
        Assert.False(trace.Misfit.IsWithinTolerance);
        Assert.InRange(trace.Misfit.SegmentsMm, 1e-6, 0.05);
    }

    // Found by hand: feet that fall back behind each other stood outside the table of the matched filter.
    [Fact]
    public void Lines_of_a_drawing_scaled_by_its_length_end_in_an_outline()
    {
        TraceResult trace = Given.Run(
            Given.Read("outline-lines-r12.dxf"),
            new TraceOptions { Known = new KnownLength(KnownLengthKind.BodyLength, 488) }
        );
        Assert.Equal(488, trace.Fair.BodyLengthMm, 1e-3);
    }
}

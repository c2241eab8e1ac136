using BenchmarkDotNet.Attributes;
using Formwright.Drawing;
using Formwright.Writers;

namespace Formwright.Bench;

/// <summary>A large full-size body sheet: layout, and each writer.</summary>
[InProcess, WarmupCount(3), IterationCount(12), MemoryDiagnoser, MinColumn]
public class WriterBenchmarks
{
    private readonly Sheet sheet = BodySheet.Make();
    private DrawnSheet drawn = null!;

    [GlobalSetup]
    public void Setup() => drawn = sheet.Draw();

    [Benchmark]
    public DrawnSheet Layout() => sheet.Draw();

    [Benchmark]
    public long Pdf()
    {
        using MemoryStream stream = new();
        PdfWriter.Write(stream, [drawn]);
        return stream.Length;
    }

    [Benchmark]
    public long Tiles()
    {
        using MemoryStream stream = new();
        PdfWriter.Write(stream, TilePlan.Of(drawn, Paper.A4));
        return stream.Length;
    }

    [Benchmark]
    public int Svg() => SvgWriter.Write(drawn).Length;

    [Benchmark]
    public long Png()
    {
        using MemoryStream stream = new();
        PngWriter.Write(stream, drawn, 3);
        return stream.Length;
    }
}

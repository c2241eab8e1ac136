using BenchmarkDotNet.Attributes;
using Formwright.Design;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Packs;

namespace Formwright.Bench;

/// <summary>From a design's text to everything but files, as while a handle is dragged, and the whole pack.</summary>
[MemoryDiagnoser]
public class DesignBenchmarks
{
    private string text = "";
    private string folder = "";
    private Study study = null!;
    private bool other;

    [GlobalSetup]
    public void Prepare()
    {
        text = DesignModels.TextOf("heron");
        study = Study.Of(DesignText.Parse(text, "heron").Design!);
        folder = Directory.CreateTempSubdirectory("formwright-bench").FullName;
    }

    [GlobalCleanup]
    public void Clear() => Directory.Delete(folder, recursive: true);

    /// <summary>Text to outline, dome, workboard, mould and templates; nothing is reused.</summary>
    [Benchmark]
    public int Geometry()
    {
        Guitar guitar = Guitar.Build(DesignText.Parse(text, "heron").Design!).Guitar!;
        return Tooling.Of(guitar).Parts.Count();
    }

    /// <summary>A drag of the lower bout: every figure of the design, with 20,000 builds for the chance.</summary>
    [Benchmark]
    public int Drag()
    {
        other = !other;
        string dragged = DesignEdit.Set(text, "outline.lower_bout.width", other ? "369" : "368");
        return Study.Of(DesignText.Parse(dragged, "heron").Design!, study, 20_000).Findings.Count;
    }

    /// <summary>The whole pack, files and all.</summary>
    [Benchmark]
    public int Pack() =>
        PackWriter.Write(study, text, Path.Combine(folder, "heron")).Manifest!.Files.Count;
}

using BenchmarkDotNet.Attributes;
using Formwright.Design;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Jigs;
using Formwright.Jigs.BoardChecks;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Spine;
using Formwright.Jigs.Templates;
using Formwright.Jigs.Workboard;

namespace Formwright.Bench;

/// <summary>All tooling of one design, by relief method, and its pieces; a board that was measured.</summary>
[MemoryDiagnoser]
public class ToolingBenchmarks
{
    private Guitar guitar = null!;
    private SoundboardPlan soundboard = null!;
    private MouldPlan mould = null!;
    private WorkboardPlan board = null!;
    private ChainModel chain = null!;
    private IReadOnlyList<MeasuredGap> gaps = [];

    /// <summary>Heron carved, Dunlin cork overlay with a spine on edge, Plover plywood overlay.</summary>
    [Params("heron", "dunlin", "plover")]
    public string Model { get; set; } = "";

    [GlobalSetup]
    public void Prepare()
    {
        guitar = Guitar.Build(DesignText.Parse(DesignModels.TextOf(Model), Model).Design!).Guitar!;
        soundboard = BodyPlan.Of(guitar).Soundboard;
        mould = MouldMaker.Of(guitar);
        board = WorkboardMaker.Of(guitar, mould);
        chain = NeckAndAction.Of(guitar, builds: 0).Model;
        gaps = MeasuredGaps.Parse("nut=1.9/1.6,fret5=1.1/0.9", board.GapTable).Gaps;
    }

    /// <summary>Board, spine, mould, templates: every part, table and finding; the soundboard is the body's.</summary>
    [Benchmark]
    public int All()
    {
        Tooling tooling = Tooling.Of(guitar, soundboard);
        return tooling.Parts.Count() + tooling.Findings.Count;
    }

    [Benchmark]
    public int Board() => WorkboardMaker.Of(guitar, mould, soundboard).Parts.Count;

    [Benchmark]
    public double Spine() => SpinePlan.Of(guitar, mould).WarpMm;

    [Benchmark]
    public int Templates() => TemplateMaker.Of(guitar).Count + BenchTemplates.Of(guitar).Count;

    /// <summary>Measured gaps to shim, saddle and action.</summary>
    [Benchmark]
    public bool Check() => BoardCheck.Of(guitar, board, chain, gaps).Passes;
}

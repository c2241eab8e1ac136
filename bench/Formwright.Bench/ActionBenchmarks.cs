using BenchmarkDotNet.Attributes;
using Formwright.Design;
using Formwright.Instrument.Action;

namespace Formwright.Bench;

/// <summary>What a slider drives: the height chain of the Heron, strung; and all of neck and action but the many builds.</summary>
[InProcess, WarmupCount(3), IterationCount(12), MemoryDiagnoser, MinColumn]
public class ActionBenchmarks
{
    private InstrumentDesign design = null!;
    private ChainModel model = null!;

    // A paraboloid stands for the dome, which has benchmarks of its own.
    internal static double Dome(double x, double y) =>
        Math.Max(0, 2.5 - (6e-5 * (x - 670) * (x - 670)) - (1e-4 * y * y));

    internal static InstrumentDesign Heron()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Formwright.slnx")))
        {
            folder = folder.Parent;
        }

        return DesignText.Load(Path.Combine(folder!.FullName, "examples", "heron.toml")).Design!;
    }

    [GlobalSetup]
    public void Setup()
    {
        design = Heron();
        model = ActionSetup.Of(design, Dome).Model;
    }

    [Benchmark]
    public HeightChain StrungChain() => model.At(BuildStage.Strung);

    [Benchmark]
    public HeightChain UnloadedChain() => model.At(BuildStage.OnBoard);

    [Benchmark]
    public ActionSetup SetupWithIntonation() => ActionSetup.Of(design, Dome);

    [Benchmark]
    public SolveAnswer SolveForRamp() => new ActionSolver(model, design, 0.95).For(Unknown.Ramp);

    [Benchmark]
    public NeckAndAction AllButTheBuilds() => NeckAndAction.Of(design, Dome, 0);

    [Benchmark]
    public NeckAndAction AllWithTheDesignsBuilds() => NeckAndAction.Of(design, Dome);
}

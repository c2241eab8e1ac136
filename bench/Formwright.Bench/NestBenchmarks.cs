using BenchmarkDotNet.Attributes;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Stock;

namespace Formwright.Bench;

/// <summary>Nesting of the Heron: its mould (six layers on one sheet), the same with ten times the work, and all its tooling.</summary>
[MemoryDiagnoser]
public class NestBenchmarks
{
    private StockDesign stock = null!;
    private Part[] mould = null!;
    private Part[] all = null!;

    [GlobalSetup]
    public void Read()
    {
        InstrumentDesign design = DesignText.Parse(DesignModels.TextOf("heron"), "heron").Design!;
        Tooling tooling = Tooling.Of(Guitar.Build(design).Guitar!);
        stock = design.Stock;
        mould = [.. tooling.Mould.Parts];
        all = [.. tooling.Parts];
    }

    [Benchmark(Baseline = true)]
    public double Mould() => Length(mould, StockPlanner.UsualEffort);

    [Benchmark]
    public double MouldTenTimes() => Length(mould, 10 * StockPlanner.UsualEffort);

    [Benchmark]
    public double AllTooling() => Length(all, StockPlanner.UsualEffort);

    private double Length(Part[] parts, long effort) =>
        StockPlanner.Of(stock, parts, [], effort).Sheets.Sum(sheet => sheet.UsedLengthMm);
}

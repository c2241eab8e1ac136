using BenchmarkDotNet.Attributes;
using Formwright.Curves;

namespace Formwright.Bench;

/// <summary>Offsets of the Heron's whole outline, and their conversion.</summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class OffsetBenchmarks
{
    private readonly Chain closed = CurveModels.Outline.Closed;
    private readonly Chain half = CurveModels.Outline.Half;
    private readonly OffsetPath board = Offset.Of(CurveModels.Outline.Closed, -50).Paths[0];

    /// <summary>The workboard's edge.</summary>
    [Benchmark]
    public OffsetResult Outside50() => Offset.Of(closed, -50);

    /// <summary>The rim.</summary>
    [Benchmark]
    public OffsetResult Inside12() => Offset.Of(closed, 12);

    /// <summary>Beyond the radii of the bouts: trimmed.</summary>
    [Benchmark]
    public OffsetResult Inside80() => Offset.Of(closed, 80);

    [Benchmark]
    public OffsetAudit Validate() => OffsetValidator.Check(closed, -50, [board], 2);

    [Benchmark]
    public ArcPath OffsetToArcs() => board.ToArcs(0.01);

    [Benchmark]
    public Polyline HalfToPolyline() => half.ToPolyline(0.01);

    [Benchmark]
    public ArcPath HalfToArcs() => half.ToArcs(0.01);

    [Benchmark]
    public BezierPath HalfToBeziers() => half.ToBeziers(0.01);
}

using BenchmarkDotNet.Attributes;
using Formwright.Curves;

namespace Formwright.Bench;

/// <summary>What every part asks of a chain: half the Heron's outline.</summary>
[InProcess, WarmupCount(2), IterationCount(12), MemoryDiagnoser, MinColumn]
public class ChainBenchmarks
{
    private const int Many = 1000;
    private readonly Chain half = CurveModels.Outline.Half;
    private readonly double[] arcLengths = new double[Many];
    private readonly CurvePoint[] places = new CurvePoint[Many];
    private readonly EulerSegment turning = new(Point.Origin, 0, 0.01, 1e-4, 400);

    [GlobalSetup]
    public void Setup()
    {
        for (int i = 0; i < Many; i++)
        {
            arcLengths[i] = half.LengthMm * i / Many;
        }
    }

    [Benchmark(OperationsPerInvoke = Many)]
    public void Place() => half.Sample(arcLengths, places);

    /// <summary>20 rad of turning: ten panels.</summary>
    [Benchmark]
    public Point TurningPlace() => turning.PositionAt(400);

    [Benchmark(OperationsPerInvoke = Many)]
    public double Nearest()
    {
        double sum = 0;
        for (int i = 0; i < Many; i++)
        {
            sum += half.Nearest(new Point(i * 0.488, 60 + (0.1 * i))).DistanceMm;
        }

        return sum;
    }

    [Benchmark]
    public IReadOnlyList<OutlineRow> Table() => CurveModels.Outline.Table();

    [Benchmark]
    public double Area() => new Chain(half.Segments).SignedAreaMm2;
}

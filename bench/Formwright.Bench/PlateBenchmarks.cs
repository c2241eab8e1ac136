using BenchmarkDotNet.Attributes;
using Formwright.Fields.Plates;

namespace Formwright.Bench;

/// <summary>The Heron's soundboard: from the plate to the bridge's answer to its loads, and to twenty modes.</summary>
[InProcess, MemoryDiagnoser, MinColumn]
public class PlateBenchmarks
{
    private PlateModel model = null!;

    [Params(5000, 20000)]
    public int Unknowns { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        model = PlateModel.Of(HeronSoundboard.Plate, Unknowns);
        PlateModes modes = model.Modes(20);
        Console.WriteLine(
            $"// {model.UnknownCount} unknowns, {model.Mesh.TriangleCount} triangles, smallest angle {model.Mesh.SmallestAngleRad * 180 / Math.PI:0} deg, first mode {modes.Modes[0].FrequencyHz:0.00} Hz, largest residual {modes.Modes.Max(mode => mode.Residual):e1}"
        );
    }

    /// <summary>Mesh, elements, order, factor, three loads.</summary>
    [Benchmark]
    public BridgeInfluence MeshAndDeflect() =>
        PlateModel.Of(HeronSoundboard.Plate, Unknowns).Influence(HeronSoundboard.Bridge);

    /// <summary>Factor, Lanczos, count of eigenvalues by a second factor.</summary>
    [Benchmark]
    public PlateModes TwentyModes() => model.Modes(20);
}

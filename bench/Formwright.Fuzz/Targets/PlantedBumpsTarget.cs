using Formwright.Trace.Tests;

namespace Formwright.Fuzz.Targets;

/// <summary>One planted bump each, anywhere: it must come back at its place and height and alone. The mutated bytes are not used.</summary>
internal sealed class PlantedBumpsTarget : IFuzzTarget
{
    public string Name => "planted-bumps";

    public IReadOnlyList<byte[]> Seeds { get; } =
    [
        [],
    ];

    public IReadOnlyList<string> Pieces { get; } = [" "];

    public int MostChanges => 1;

    public string Try(byte[] input, Random random)
    {
        string? fault = PlantedBumps.Run(random.Next());
        return fault is null ? "recovered" : throw new BrokenPromiseException(fault);
    }
}

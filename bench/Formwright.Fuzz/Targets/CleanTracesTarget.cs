using Formwright.Trace.Tests;

namespace Formwright.Fuzz.Targets;

/// <summary>Traces without a bump, with noise: none may be told. The mutated bytes are not used.</summary>
internal sealed class CleanTracesTarget : IFuzzTarget
{
    public string Name => "clean-traces";

    public IReadOnlyList<byte[]> Seeds { get; } =
    [
        [],
    ];

    public IReadOnlyList<string> Pieces { get; } = [" "];

    public int MostChanges => 1;

    public string Try(byte[] input, Random random)
    {
        IReadOnlyList<string> told = CleanTraces.Run(random.Next());
        return told.Count == 0
            ? "no bump"
            : throw new BrokenPromiseException(string.Join("; ", told));
    }
}

using Formwright.Curves;
using Formwright.Trace.Files;

namespace Formwright.Trace.Tests;

/// <summary>Seeded traces without a bump, of all three models, with noise up to 0.2 mm: any bump told is a false one.</summary>
internal static class CleanTraces
{
    private static readonly double[] NoisesMm = [0, 0.01, 0.02, 0.03, 0.05, 0.1, 0.2];
    private static readonly string[] Names = [.. ShakenOutline.Models.Keys];
    private static readonly Outline[] Outlines =
    [
        .. Names.Select(name => MinimumVariation.Solve(ShakenOutline.Models[name]).Outline!),
    ];

    /// <summary>One case; the false bumps that it tells.</summary>
    internal static IReadOnlyList<string> Run(int seed)
    {
        int which = seed % Names.Length;
        Random random = new(seed);
        double noise = NoisesMm[seed / Names.Length % NoisesMm.Length];
        double step = 0.4 + random.NextDouble();
        Chain half = Outlines[which].Half;
        TraceFile file = ShakenOutline.Whole(
            ShakenOutline.Half(half, step, noise, random),
            ShakenOutline.Half(half, step, noise, random),
            turn: random.NextDouble() * 6
        );
        TraceOutcome outcome = Tracing.Run(file, new TraceOptions());
        return outcome.Succeeded
            ?
            [
                .. outcome.Result.Bumps.Select(bump =>
                    $"{Names[which]}, seed {seed}, noise {noise}: {bump.HeightMm:0.000} mm at {bump.UMm:0}, {bump.LengthMm:0} long"
                ),
            ]
            : [.. outcome.Diagnostics.Select(diagnostic => diagnostic.Message)];
    }
}

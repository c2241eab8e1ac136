using Formwright.Curves;

namespace Formwright.Trace.Tests;

/// <summary>
/// Seeded traces with one bump of 0.1 to 1 mm over 10 to 60 mm, anywhere on either side, points of at most 0.03 mm noise: it must come
/// back alone, its height within 10 % or 0.05 mm, its place within 5 mm.
/// </summary>
internal static class PlantedBumps
{
    private static readonly string[] Names = [.. ShakenOutline.Models.Keys];
    private static readonly Outline[] Outlines =
    [
        .. Names.Select(name => MinimumVariation.Solve(ShakenOutline.Models[name]).Outline!),
    ];

    /// <summary>One case; what is wrong with what came back, or null.</summary>
    internal static string? Run(int seed)
    {
        Random random = new(seed);
        int which = random.Next(Names.Length);
        Chain half = Outlines[which].Half;
        double length = 10 + (50 * random.NextDouble());
        double height = Math.Pow(10, random.NextDouble() - 1) * (random.Next(2) == 0 ? 1 : -1);
        double arc = (length / 2) + (random.NextDouble() * (half.LengthMm - length));
        double noise = 0.03 * random.NextDouble();
        double step = 0.4 + (0.3 * random.NextDouble());
        Point[] bumpy = ShakenOutline.Half(half, step, noise, random, (arc, length, height));
        Point[] clean = ShakenOutline.Half(half, step, noise, random);
        bool isTreble = random.Next(2) == 0;
        TraceOutcome outcome = Tracing.Run(
            ShakenOutline.Whole(
                isTreble ? bumpy : clean,
                isTreble ? clean : bumpy,
                turn: random.NextDouble() * 6
            ),
            new TraceOptions()
        );
        string planted =
            $"{Names[which]}, seed {seed}: {height:0.000} mm at {arc:0} of {half.LengthMm:0} along the {(isTreble ? "treble" : "bass")} side, {length:0} long, noise {noise:0.000}";
        if (!outcome.Succeeded)
        {
            return $"{planted}: {outcome.Diagnostics[0].Message}";
        }

        if (outcome.Result.Bumps is not [{ } bump])
        {
            return $"{planted}: {outcome.Result.Bumps.Count} bumps, {outcome.Result.Unsure.Count} unsure";
        }

        bool isRight =
            Math.Abs(bump.HeightMm - Math.Abs(height)) <= Math.Max(0.05, 0.1 * Math.Abs(height))
            && Math.Abs(bump.ArcMm - arc) <= 5
            && bump.IsProud == height > 0
            && bump.Side == (isTreble ? TraceSide.Treble : TraceSide.Bass);
        return isRight
            ? null
            : $"{planted}: {bump.HeightMm:0.000} {(bump.IsProud ? "proud" : "hollow")} at {bump.ArcMm:0} on the {bump.Side}";
    }
}

using Formwright.Curves;
using Formwright.Testing;
using Formwright.Trace.Files;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>Outlines and traces that the tests start from.</summary>
internal static class Given
{
    internal static IReadOnlyDictionary<string, OutlineFeatures> Models => ShakenOutline.Models;

    internal static Outline Model(string name) => MinimumVariation.Solve(Models[name]).Outline!;

    internal static string File(string name) =>
        Repository.PathOf("tests", "Formwright.Trace.Tests", "files", name);

    internal static TraceFile Read(string name)
    {
        TraceReading reading = TraceReader.Load(File(name));
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        return reading.File;
    }

    internal static TraceReading Read(string text, string name) =>
        TraceReader.Read(System.Text.Encoding.UTF8.GetBytes(text), name);

    internal static Point[] Half(
        Chain half,
        double stepMm,
        double noiseMm,
        Random random,
        params (double ArcMm, double LengthMm, double HeightMm)[] bumps
    ) => ShakenOutline.Half(half, stepMm, noiseMm, random, bumps);

    internal static TraceFile Whole(
        Point[] treble,
        Point[] bass,
        double turn = 0,
        double scale = 1,
        double dx = 0,
        double dy = 0
    ) => ShakenOutline.Whole(treble, bass, turn, scale, dx, dy);

    internal static TraceFile OfPoints(Point[] points, bool isClosed) =>
        ShakenOutline.OfPoints(points, isClosed);

    /// <summary>Largest distance of places of one outline from the other.</summary>
    internal static double Apart(Outline from, Outline to)
    {
        double largest = 0;
        for (int i = 0; i <= 500; i++)
        {
            Point place = from.Half.At(from.HalfPerimeterMm * i / 500).Position;
            largest = Math.Max(largest, to.Half.Nearest(place).DistanceMm);
        }

        return largest;
    }

    internal static TraceResult Run(TraceFile file, TraceOptions? options = null)
    {
        TraceOutcome outcome = Tracing.Run(file, options ?? new TraceOptions());
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Diagnostics));
        return outcome.Result;
    }
}

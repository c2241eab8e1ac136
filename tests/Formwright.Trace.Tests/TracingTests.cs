using System.Globalization;
using System.Text;
using Formwright.Curves;
using Formwright.Trace.Files;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>Outlines that are known exactly go out as files and come back as features.</summary>
public sealed class TracingTests
{
    // Three invented outlines: body length, then station and width of upper bout, waist and lower bout.
    public static TheoryData<double, double, double, double, double, double, double> Models =>
        new()
        {
            { 488, 104, 282, 190, 236, 356, 368 },
            { 462, 99, 262, 180, 220, 337, 342 },
            { 412, 88, 238, 160, 200, 300, 308 },
        };

    [Theory]
    [MemberData(nameof(Models))]
    public void A_turned_and_moved_table_of_points_gives_the_features_back(
        double length,
        double upperAt,
        double upper,
        double waistAt,
        double waist,
        double lowerAt,
        double lower
    )
    {
        Chain outline = MinimumVariation
            .Solve(
                new OutlineFeatures(
                    length,
                    new(upperAt, upper),
                    new(waistAt, waist),
                    new(lowerAt, lower)
                )
            )
            .Outline!.Closed.Rotated(0.21)
            .Moved(new Vector(31, -17));
        TraceOutcome outcome = Tracing.Run(Read(Table(outline, 900)), new TraceOptions());
        Assert.Empty(outcome.Diagnostics);
        TracedFeatures found = outcome.Result!.Features;
        Assert.Equal(length, found.BodyLengthMm, 0.1);
        Assert.Equal(upper, found.UpperBout!.WidthMm, 0.1);
        Assert.Equal(waist, found.Waist!.WidthMm, 0.1);
        Assert.Equal(lower, found.LowerBout!.WidthMm, 0.1);
        Assert.Equal(upperAt, found.UpperBout.UMm, 1.0);
        Assert.Equal(waistAt, found.Waist.UMm, 1.0);
        Assert.Equal(lowerAt, found.LowerBout.UMm, 1.0);
        Assert.Empty(outcome.Result.Bumps);
    }

    [Theory]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0 L10 0 L10 10 Z\"/></svg>"
    )]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0 L10 0")]
    [InlineData("  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n")]
    [InlineData("1;2\n1;2\n1;2\n")]
    [InlineData("")]
    public void A_hostile_or_broken_file_gives_diagnostics_and_no_exception(string text)
    {
        TraceReading reading = TraceReader.Read(Encoding.UTF8.GetBytes(text), "given");
        bool refused =
            !reading.Succeeded || !Tracing.Run(reading.File, new TraceOptions()).Succeeded;
        Assert.True(refused);
    }

    private static TraceFile Read(string text)
    {
        TraceReading reading = TraceReader.Read(Encoding.UTF8.GetBytes(text), "outline.csv");
        Assert.Empty(reading.Diagnostics);
        return reading.File!;
    }

    private static string Table(Chain outline, int count)
    {
        StringBuilder text = new("x;y\n");
        for (int i = 0; i <= count; i++)
        {
            Point place = outline.At(outline.LengthMm * (i % count) / count).Position;
            text.Append(CultureInfo.InvariantCulture, $"{place.X:0.0000};{place.Y:0.0000}\n");
        }

        return text.ToString();
    }
}

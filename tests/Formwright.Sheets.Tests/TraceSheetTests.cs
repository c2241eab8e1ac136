using System.Globalization;
using System.Text;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Sheets.Trace;
using Formwright.Trace;
using Formwright.Trace.Comparing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class TraceSheetTests
{
    private static readonly OutlineFeatures Heron = new(
        488,
        new(104, 282),
        new(190, 236),
        new(356, 368)
    );

    [Theory]
    [InlineData("en", 0)]
    [InlineData("es", 1)]
    [InlineData("en", 6)]
    [InlineData("es", 6)]
    public void No_sheet_of_a_trace_has_a_flaw(string language, int bumps)
    {
        using Speaking speaking = new(language);
        TraceResult trace = Traced(bumps);
        Assert.Equal(bumps, trace.Bumps.Count);
        IReadOnlyList<NamedSheet> sheets = TraceSheets.Of(trace, "An old template");
        Assert.Equal(
            bumps switch
            {
                0 => ["trace", "curvature"],
                <= 4 => ["trace", "bumps", "curvature"],
                _ => ["trace", "bumps", "bumps-2", "curvature"],
            },
            sheets.Select(named => named.Id)
        );
        Assert.Empty(Flaws.Of(sheets));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void No_sheet_of_a_comparison_has_a_flaw(string language)
    {
        using Speaking speaking = new(language);
        Curves.Outline first = MinimumVariation.Solve(Heron).Outline!;
        Curves.Outline second = MinimumVariation
            .Solve(Heron with { LowerBout = new(352, 372) })
            .Outline!;
        IReadOnlyList<NamedSheet> sheets = TraceSheets.Of(
            "Heron",
            first,
            "An old template",
            second,
            OutlineComparison.Of(first, second)
        );
        Assert.Equal(["compare", "curvature"], sheets.Select(named => named.Id));
        Assert.Empty(Flaws.Of(sheets));
        Assert.True(sheets[0].IsTiled);
    }

    // Measured on the sheet: the outline is drawn at full size.
    [Fact]
    public void The_overlay_is_true_to_scale()
    {
        TraceResult trace = Traced(0);
        Box outline = TraceSheets
            .Of(trace, "t")[0]
            .Sheet.Draw()
            .Marks.OfType<StrokeMark>()
            .Where(mark => mark.Style.Layer == "outline" && mark.Shape.Closed)
            .Select(mark => mark.Shape.Bounds())
            .Single();
        Assert.Equal(trace.Fair.BodyLengthMm, outline.HeightMm, 0.02);
        Assert.Equal(2 * trace.Fair.Half.Box.Max.Y, outline.WidthMm, 0.02);
    }

    private static TraceResult Traced(int bumps)
    {
        Chain half = MinimumVariation.Solve(Heron).Outline!.Half;
        const int Count = 1400;
        List<Point> treble = [];
        List<Point> bass = [];
        for (int i = 0; i <= Count; i++)
        {
            CurvePoint at = half.At(half.LengthMm * i / Count);
            double s = half.LengthMm * i / Count;
            double off = 0;
            for (int b = 0; b < bumps; b++)
            {
                double share = (s - (70 + (110 * b))) / 24;
                off +=
                    Math.Abs(share) < 0.5
                        ? 0.2 * (b % 2 == 0 ? 1 : -1) * (1 + Math.Cos(2 * Math.PI * share))
                        : 0;
            }

            treble.Add(at.Position + (at.Normal * off));
            bass.Add(at.Position with { Y = -at.Position.Y });
        }

        bass.Reverse();
        string text = string.Join(
            '\n',
            treble
                .Concat(bass.Skip(1).SkipLast(1))
                .Select(at =>
                    string.Create(CultureInfo.InvariantCulture, $"{at.X:0.0000};{at.Y:0.0000}")
                )
        );
        TraceOutcome outcome = Tracing.Run(
            Encoding.UTF8.GetBytes("x;y\n" + text),
            "t.csv",
            new TraceOptions()
        );
        Assert.True(outcome.Succeeded);
        return outcome.Result;
    }

    private sealed class Speaking : IDisposable
    {
        private readonly CultureInfo before = CultureInfo.CurrentUICulture;

        internal Speaking(string language) =>
            CultureInfo.CurrentUICulture = new CultureInfo(language);

        public void Dispose() => CultureInfo.CurrentUICulture = before;
    }
}

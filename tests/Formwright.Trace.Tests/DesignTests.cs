using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Trace.Comparing;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>A trace becomes a design, and two outlines are compared.</summary>
public class DesignTests
{
    [Fact]
    public void A_trace_that_is_no_fairest_curve_is_written_with_its_run()
    {
        TraceResult trace = Given.Run(Given.Read("outline-2000.dxf"));
        Assert.Null(trace.Plain);
        string text = TracedDesign.Text(DesignModels.TextOf("heron"), trace);
        DesignReading reading = DesignText.Parse(text, "t.toml");
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        OutlineDesign outline = reading.Design!.Outline;
        OutlineCurveDesign curve = Assert.IsType<OutlineCurveDesign>(outline.Curve);
        Assert.Equal(trace.Misfit.Segments, curve.LengthsMm.Count);
        Assert.Equal(curve.LengthsMm.Count + 1, curve.BendsPerM.Count);
        Assert.Equal(TracedDesign.Outline(trace), outline);
        // Its figures give the outline again.
        CurvaturePlot plot = new(
            curve.LengthsMm,
            [.. curve.BendsPerM.Select(bend => -bend / 1000)]
        );
        Outline again = plot.Closed(mostMm: 1)!.ToOutline()!;
        Assert.InRange(Given.Apart(again, trace.Fair), 0, 0.02);
        AdaptedOutline adapted = Adaptation.To(
            again,
            new OutlineFeatures(
                outline.BodyLengthMm,
                new(outline.UpperBout.AtMm, outline.UpperBout.WidthMm),
                new(outline.Waist.AtMm, outline.Waist.WidthMm),
                new(outline.LowerBout.AtMm, outline.LowerBout.WidthMm)
            )
        );
        Assert.InRange(Given.Apart(adapted.Outline!, trace.Fair), 0, 0.03);
        Assert.Contains("soundhole", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_nearest_model_lends_the_rest()
    {
        Assert.Equal("heron", TracedDesign.NearestModel(500));
        Assert.Equal("dunlin", TracedDesign.NearestModel(460));
        Assert.Equal("plover", TracedDesign.NearestModel(100));
    }

    [Fact]
    public void A_change_scales_what_is_not_given()
    {
        OutlineDesign heron = DesignText.Parse(DesignModels.TextOf("heron"), "h").Design!.Outline;
        OutlineDesign scaled = new OutlineChange(Factor: 640.0 / 650).Of(heron);
        Assert.Equal(Math.Round(488 * 640.0 / 650, 2), scaled.BodyLengthMm);
        Assert.Equal(Math.Round(368 * 640.0 / 650, 2), scaled.LowerBout.WidthMm);
        OutlineDesign wider = new OutlineChange(LowerBoutMm: 372, BodyLengthMm: 490).Of(heron);
        Assert.Equal(372, wider.LowerBout.WidthMm);
        Assert.Equal(Math.Round(282 * 490.0 / 488, 2), wider.UpperBout.WidthMm);
        string text = new OutlineChange(LowerBoutMm: 372).Of(DesignModels.TextOf("heron"), heron);
        Assert.Equal(372, DesignText.Parse(text, "h").Design!.Outline.LowerBout.WidthMm);
        Assert.Contains("# heel to tail", text, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new OutlineChange(WaistMm: -1).Of(heron));
    }

    [Fact]
    public void Circles_compare_as_their_radii_say()
    {
        static Outline Circle(double r) =>
            new(new Chain([new EulerSegment(new(0, 0), 0.5 * Math.PI, -1 / r, 0, Math.PI * r)]));
        OutlineComparison comparison = OutlineComparison.Of(Circle(100), Circle(101));
        // Heels on each other: the tails lie 2 mm apart, the curves 2 (1 - cos) / 2 ... at most 2 mm.
        Assert.Equal(2, comparison.LargestMm, 1e-3);
        Assert.Equal(Math.PI * (10_201 - 10_000), comparison.AreaDifferenceMm2, 1e-3);
        Assert.InRange(comparison.Change.LargestShare, 0, 1e-9);
        WidthPair middle = comparison.Widths.Single(row => row.UMm == 100);
        Assert.Equal(200, middle.WidthMm, 1e-6);
        Assert.Equal(2 * Math.Sqrt((101 * 101) - 1), middle.OtherWidthMm, 1e-6);
        // Distance from the smaller circle outwards at angle t from the heel: |c + 101 ...|; its mean square over both is 1.5 to first order.
        Assert.Equal(Math.Sqrt(1.5), comparison.RmsMm, 0.02);
    }

    [Fact]
    public void An_outline_compared_with_itself_differs_by_nothing()
    {
        Outline heron = Given.Model("heron");
        OutlineComparison comparison = OutlineComparison.Of(heron, heron);
        Assert.InRange(comparison.LargestMm, 0, 1e-9);
        Assert.Equal(0, comparison.AreaDifferenceMm2);
        Assert.All(comparison.Widths, row => Assert.Equal(0, row.DifferenceMm));
    }
}

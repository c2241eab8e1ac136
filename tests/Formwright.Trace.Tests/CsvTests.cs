using System.Globalization;
using Formwright.Curves;
using Formwright.Trace.Aligning;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;
using Xunit;

namespace Formwright.Trace.Tests;

public class CsvTests
{
    [Theory]
    [InlineData("1,5;2,5\n3,5;4,5\n", 1.5, 2.5)]
    [InlineData("1.5;2.5\n3.5;4.5\n", 1.5, 2.5)]
    [InlineData("1,5\t2,5\n3,5\t4,5\n", 1.5, 2.5)]
    [InlineData("1.5,2.5\n3.5,4.5\n", 1.5, 2.5)]
    [InlineData("1.5, 2.5\r\n3.5, 4.5\r\n", 1.5, 2.5)]
    [InlineData("1,5 2,5\n3,5 4,5\n", 1.5, 2.5)]
    [InlineData("1.5 2.5\n3.5 4.5\n", 1.5, 2.5)]
    [InlineData("10,20\n30,40\n", 10, 20)]
    [InlineData("# remark\n\"x\";\"y\"\n1,5;2,5\n3,5;4,5\n", 1.5, 2.5)]
    [InlineData("\uFEFFx;y;\n1,5;2,5;\n3,5;4,5;\n", 1.5, 2.5)]
    [InlineData("x_in,y_in\n1,2\n3,4\n", 25.4, 50.8)]
    [InlineData("x (cm);y (cm)\n1,5;2\n3;4\n", 15, 20)]
    [InlineData("-1e1;+2.5E0\n3;4\n", -10, 2.5)]
    public void Figures_are_read_as_people_write_them(string text, double x, double y)
    {
        TraceReading reading = Given.Read(text, "t.csv");
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        Point first = Assert.Single(reading.File.Curves).Pieces[0].Start;
        Assert.Equal(x, first.X, 1e-9);
        Assert.Equal(y, first.Y, 1e-9);
    }

    [Theory]
    [InlineData("station;half_width\n0;0\n10;50\n20;0\n", TraceLayout.HalfWidths, 50)]
    [InlineData("at;width\n0;0\n10;50\n20;0\n", TraceLayout.HalfWidths, 25)]
    [InlineData("estación;ancho\n0;0\n10;50\n20;0\n", TraceLayout.HalfWidths, 25)]
    [InlineData("0;0\n10;50\n20;0\n", TraceLayout.HalfWidths, 50)]
    [InlineData("x;y\n0;0\n10;50\n20;0\n", TraceLayout.Drawing, 50)]
    [InlineData("0;0\n10;-50\n20;0\n", TraceLayout.Drawing, -50)]
    [InlineData("10;0\n10;50\n20;0\n", TraceLayout.Drawing, 50)]
    [InlineData("u;bass;treble\n0;0;0\n10;50;51\n20;0;0\n", TraceLayout.BothHalfWidths, -50)]
    public void Columns_are_told_by_the_heading_or_by_the_figures(
        string text,
        TraceLayout layout,
        double second
    )
    {
        TraceReading reading = Given.Read(text, "t.csv");
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        Assert.Equal(layout, reading.File.Layout);
        PointsPiece points = Assert.IsType<PointsPiece>(reading.File.Curves[0].Pieces[0]);
        Assert.Equal(second, points.Places[1].Y);
    }

    [Fact]
    public void A_table_of_stations_every_ten_mm_gives_the_outline()
    {
        Outline model = Given.Model("heron");
        List<string> rows = ["station;half_width"];
        for (int u = 0; u < 488; u += u is < 20 or >= 470 ? 2 : 10)
        {
            rows.Add(Row(u, model.WidthAt(u) / 2));
        }

        rows.Add(Row(488, 0));
        TraceReading reading = Given.Read(string.Join('\n', rows), "t.csv");
        Assert.True(reading.Succeeded, string.Join('\n', reading.Diagnostics));
        TraceResult trace = Given.Run(reading.File);
        Assert.Equal(CentrelineSource.Table, trace.Alignment.Source);
        Assert.InRange(Given.Apart(trace.Fair, model), 0, 0.1);
        Assert.Empty(trace.Bumps);
    }

    [Fact]
    public void Both_half_widths_are_two_sides()
    {
        Outline model = Given.Model("heron");
        List<string> rows = ["station;bass;treble"];
        for (int u = 0; u < 488; u += u is < 20 or >= 470 ? 2 : 6)
        {
            double half = model.WidthAt(u) / 2;
            rows.Add(
                FormattableString.Invariant($"{u};{half:0.000};{half + (u == 0 ? 0 : 0.4):0.000}")
            );
        }

        rows.Add("488;0;0");
        TraceReading reading = Given.Read(string.Join('\n', rows), "t.csv");
        TraceResult trace = Given.Run(reading.File!);
        SideDifference middle = trace.Differences.MinBy(row => Math.Abs(row.UMm - 300));
        Assert.Equal(0.4, middle.TrebleOverBassMm, 0.1);
    }

    private static string Row(double u, double half) =>
        string.Create(new CultureInfo("de-DE"), $"{u:0.0};{half:0.000}");
}

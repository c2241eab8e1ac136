using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Web.Components.Board;
using Formwright.Web.Reading;

namespace Formwright.Web.Tests;

public sealed class OutlineDrawingTests
{
    private static readonly Reader English = Reader.Parse("en.mm.point.light");
    private static readonly OutlineDesign Heron = DesignText
        .Parse(DesignModels.TextOf("heron"), "heron")
        .Design!.Outline;

    [Theory]
    [InlineData(104, false)]
    [InlineData(180, true)]
    [InlineData(188, true)]
    [InlineData(190, true)]
    [InlineData(194, true)]
    public void FiguresOfStationsThatLieCloseMakeRoom(double upperBoutAtMm, bool isClose)
    {
        OutlineDesign design = Heron with
        {
            UpperBout = Heron.UpperBout with { AtMm = upperBoutAtMm },
        };
        OutlineDrawing drawing = new(design, null, 780, 760, English);
        (double StationY, double WidthX) bout = drawing.Figures["upper_bout"];
        (double StationY, double WidthX) waist = drawing.Figures["waist"];
        Assert.True(Math.Abs(bout.StationY - waist.StationY) >= 28 - 1e-9);
        // A field for a width is 68 wide and 28 high.
        Assert.True(
            Math.Abs(bout.WidthX - waist.WidthX) >= 68
                || Math.Abs(drawing.Y(upperBoutAtMm) - drawing.Y(190)) >= 28
        );
        Assert.Equal(isClose, Math.Abs(waist.WidthX - drawing.Cx) > 1);
        Assert.Equal(drawing.Cx, drawing.Figures["lower_bout"].WidthX);
        Assert.Equal(drawing.Y(356), drawing.Figures["lower_bout"].StationY, 6);
    }
}

using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Frame and centring marks after ISO 5457:1999 (how far the marks reach inwards is ours), with the title block and the two bars.</summary>
internal sealed record SheetFrame(Sheet Sheet) : Item
{
    private const double MarkMm = 5;
    private const double InwardsMm = 2.5;

    public override void Draw(Ink ink, Placement placement)
    {
        Sheet sheet = Sheet;
        TitleBlockDrawing.Draw(ink, sheet);
        new ScaleBar(sheet.HorizontalBar, IsUpright: false).Draw(ink, placement);
        new ScaleBar(sheet.VerticalBar, IsUpright: true).Draw(ink, placement);
        Box frame = sheet.Frame;
        ink.Stroke(Shape.Rectangle(frame), LineStyle.Frame);
        double x = sheet.Paper.WidthMm / 2;
        double y = sheet.Paper.HeightMm / 2;
        Mark(new(x, frame.TopMm), new(0, MarkMm));
        Mark(new(x, frame.BottomMm), new(0, -MarkMm));
        Mark(new(frame.LeftMm, y), new(-MarkMm, 0));
        Mark(new(frame.RightMm, y), new(MarkMm, 0));

        // Inwards too, but not into the title block, and short of what is drawn.
        void Mark(Point on, Vector outwards)
        {
            Box title = sheet.TitleBlockBox;
            Point inner = on - (InwardsMm / MarkMm * outwards);
            bool blocked =
                inner.X > title.LeftMm && inner.X < title.RightMm && inner.Y < title.TopMm;
            ink.Stroke(Shape.Line(blocked ? on : inner, on + outwards), LineStyle.Frame);
        }
    }
}

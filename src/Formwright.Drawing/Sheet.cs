using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A sheet of paper with its frame, title block, two 100 mm bars and what is drawn on it. Sheet mm, origin lower left, y upwards.</summary>
/// <param name="Title">Fields of the title block.</param>
/// <param name="Paper">Size of the sheet.</param>
public sealed record Sheet(TitleBlock Title, Paper Paper)
{
    /// <summary>Key of the frame, the title block and the bars.</summary>
    public const string FrameKey = "frame";

    private const double LeftBorderMm = 20;
    private const double BorderMm = 10;
    private const double InsetMm = 6;
    private const double BarStripMm = 10;

    /// <summary>What is drawn, in sheet mm; views place their own model.</summary>
    public IReadOnlyList<Item> Items { get; init; } = [];

    /// <summary>The paper.</summary>
    public Box PaperBox => Box.Of(0, 0, Paper.WidthMm, Paper.HeightMm);

    /// <summary>The frame after ISO 5457: 20 mm from the left edge, 10 mm from the others.</summary>
    public Box Frame =>
        Box.Of(LeftBorderMm, BorderMm, Paper.WidthMm - BorderMm, Paper.HeightMm - BorderMm);

    /// <summary>The title block in the lower right corner of the frame.</summary>
    public Box TitleBlockBox
    {
        get
        {
            Size size = TitleBlockDrawing.SizeOn(this);
            Box frame = Frame;
            return Box.Of(
                frame.RightMm - size.WidthMm,
                frame.BottomMm,
                frame.RightMm,
                frame.BottomMm + size.HeightMm
            );
        }
    }

    /// <summary>Where to draw: inside the frame, above the title block and the bar.</summary>
    public Box Area
    {
        get
        {
            Box inner = Frame.Grown(-InsetMm);
            double bottom = TitleBlockBox.TopMm + (IsCompact ? BarStripMm : InsetMm);
            return Box.Of(inner.LeftMm, bottom, inner.RightMm, inner.TopMm);
        }
    }

    /// <summary>Room left of the title block, above the bar; without width on a compact sheet.</summary>
    public Box BesideTitle
    {
        get
        {
            Box area = Area;
            return Box.Of(
                area.LeftMm,
                Frame.BottomMm + BarStripMm,
                Math.Max(area.LeftMm, TitleBlockBox.LeftMm - InsetMm),
                area.BottomMm
            );
        }
    }

    /// <summary>Whether the sheet is as small as A4, whose title block takes the whole width.</summary>
    public bool IsCompact => Frame.WidthMm < 300;

    /// <summary>The horizontal 100 mm bar: its left end.</summary>
    internal Point HorizontalBar =>
        new(Frame.LeftMm + InsetMm, IsCompact ? TitleBlockBox.TopMm + 4.5 : Frame.BottomMm + 4.5);

    /// <summary>The vertical 100 mm bar, in the filing border: its lower end.</summary>
    internal Point VerticalBar => new(LeftBorderMm - 6, Frame.BottomMm + 5);

    /// <summary>The sheet with more drawn on it.</summary>
    public Sheet Add(params IEnumerable<Item> items) => this with { Items = [.. Items, .. items] };

    /// <summary>Lays everything out. Writers take the result, so that all of them show the same.</summary>
    public DrawnSheet Draw()
    {
        Ink ink = new();
        ink.Draw(new SheetFrame(this) { Key = FrameKey }, Placement.Identity);
        foreach (Item item in Items)
        {
            ink.Draw(item, Placement.Identity);
        }

        return new DrawnSheet(this, ink.Marks(), ink.Views, ink.Flaws);
    }
}

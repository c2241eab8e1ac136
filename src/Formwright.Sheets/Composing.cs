using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets;

/// <summary>Puts a full-size view and a column of schedules on the smallest paper that holds both.</summary>
internal static class Composing
{
    private const double GapMm = 18;

    /// <summary>Room between the blocks of a column, mm.</summary>
    public const double BlockGapMm = 9;

    /// <summary>The view on the left, the blocks in a column on its right.</summary>
    public static Sheet WithColumn(TitleBlock title, View view, params Block[] blocks) =>
        WithColumn(title, view, Paper.Holding, blocks);

    /// <summary>The same on paper that lies on its side: for a view and a column of equal height.</summary>
    public static Sheet WithColumnAcross(TitleBlock title, View view, params Block[] blocks) =>
        WithColumn(title, view, Lying, blocks);

    /// <summary>The smallest paper on its side that holds a drawing; any other where none does.</summary>
    public static Paper Lying(Size drawing)
    {
        foreach (Paper paper in (Paper[])[Paper.A4, Paper.A3, Paper.A2])
        {
            Box area = new Sheet(TitleBlock.Empty, paper.Turned()).Area;
            if (drawing.WidthMm <= area.WidthMm && drawing.HeightMm <= area.HeightMm)
            {
                return paper.Turned();
            }
        }

        return Paper.Holding(drawing);
    }

    private static Sheet WithColumn(
        TitleBlock title,
        View view,
        Func<Size, Paper> choose,
        Block[] blocks
    )
    {
        Box box = view.Bounds();
        double column = blocks.Max(block => block.Size.WidthMm);
        double stack =
            blocks.Sum(block => block.Size.HeightMm) + (BlockGapMm * (blocks.Length - 1));
        Paper paper = choose(new Size(box.WidthMm + GapMm + column, Math.Max(box.HeightMm, stack)));
        Sheet sheet = new(title, paper);
        Box area = sheet.Area;
        Box left = Box.Of(area.LeftMm, area.BottomMm, area.RightMm - GapMm - column, area.TopMm);
        return sheet
            .Add(view.CentredIn(left))
            .Add(Flow.Down(new Point(area.RightMm - column, area.TopMm), BlockGapMm, blocks));
    }

    /// <summary>One view alone on the smallest paper that holds it, with a short note above the title block where there is room.</summary>
    public static Sheet Alone(TitleBlock title, View view)
    {
        Box box = view.Bounds();
        Sheet sheet = new(title, Paper.Holding(new Size(box.WidthMm, box.HeightMm)));
        return sheet.Add(view.CentredIn(sheet.Area));
    }
}

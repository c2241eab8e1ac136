using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets;

/// <summary>Puts a view and its schedules on the smallest paper that holds both.</summary>
internal static class Composing
{
    private const double GapMm = 18;
    private const int MostColumns = 4;

    /// <summary>Room between the blocks of a column, mm.</summary>
    public const double BlockGapMm = 9;

    /// <summary>
    /// The view with its blocks in a column on its right, or in columns below it, whichever takes less paper: a long part stands on a narrow roll then,
    /// where a column beside it would leave most of a large sheet empty.
    /// </summary>
    public static Sheet WithColumn(TitleBlock title, View view, params Block[] blocks) =>
        WithColumn(title, view, Paper.Holding, blocks);

    /// <summary>The same on paper that lies on its side, as far as there is one: for a view and a column of equal height.</summary>
    public static Sheet WithColumnAcross(TitleBlock title, View view, params Block[] blocks) =>
        WithColumn(title, view, Lying, blocks);

    private static Sheet WithColumn(
        TitleBlock title,
        View view,
        Func<Size, Paper> holding,
        Block[] blocks
    )
    {
        Size size = SizeOf(view);
        (Paper paper, Block[][]? below) = (holding(Beside(size, blocks)), (Block[][]?)null);
        // The more columns the better, as long as the paper stays as small.
        for (int count = Math.Min(blocks.Length, MostColumns); count >= 1; count--)
        {
            Block[][] columns = Columns(blocks, count);
            Size room = SizeOf(columns);
            Paper other = holding(
                new Size(
                    Math.Max(size.WidthMm, room.WidthMm),
                    size.HeightMm + GapMm + room.HeightMm
                )
            );
            if (other.IsStandard && AreaOf(other) < AreaOf(paper) - 1)
            {
                (paper, below) = (other, columns);
            }
        }

        return below is null
            ? WithColumnBeside(title, view, paper, blocks)
            : WithColumnsBelow(title, view, paper, below);
    }

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

    private static Sheet WithColumnBeside(TitleBlock title, View view, Paper paper, Block[] blocks)
    {
        double column = blocks.Max(block => block.Size.WidthMm);
        Sheet sheet = new(title, paper);
        Box area = sheet.Area;
        Box left = Box.Of(area.LeftMm, area.BottomMm, area.RightMm - GapMm - column, area.TopMm);
        return sheet
            .Add(view.CentredIn(left))
            .Add(Flow.Down(new Point(area.RightMm - column, area.TopMm), BlockGapMm, blocks));
    }

    // The columns stand on the lower edge, the view in the middle of what is left over them.
    private static Sheet WithColumnsBelow(
        TitleBlock title,
        View view,
        Paper paper,
        Block[][] columns
    )
    {
        Sheet sheet = new(title, paper);
        Box area = sheet.Area;
        Size room = SizeOf(columns);
        double top = area.BottomMm + room.HeightMm;
        sheet = sheet.Add(
            view.CentredIn(Box.Of(area.LeftMm, top + GapMm, area.RightMm, area.TopMm))
        );
        double left = area.LeftMm;
        foreach (Block[] column in columns)
        {
            sheet = sheet.Add(Flow.Down(new Point(left, top), BlockGapMm, column));
            left += WidthOf(column) + GapMm;
        }

        return sheet;
    }

    // As many columns as asked for, in reading order, so that the longest is as short as it can be.
    private static Block[][] Columns(Block[] blocks, int count)
    {
        if (count == 1)
        {
            return [blocks];
        }

        return Enumerable
            .Range(1, blocks.Length - count + 1)
            .Select(first => (Block[][])[blocks[..first], .. Columns(blocks[first..], count - 1)])
            .MinBy(columns => columns.Max(StackOf))!;
    }

    private static Size Beside(Size view, Block[] blocks) =>
        new(view.WidthMm + GapMm + WidthOf(blocks), Math.Max(view.HeightMm, StackOf(blocks)));

    private static Size SizeOf(View view)
    {
        Box box = view.Bounds();
        return new Size(box.WidthMm, box.HeightMm);
    }

    private static Size SizeOf(Block[][] columns) =>
        new(columns.Sum(WidthOf) + (GapMm * (columns.Length - 1)), columns.Max(StackOf));

    private static double WidthOf(Block[] column) => column.Max(block => block.Size.WidthMm);

    private static double StackOf(Block[] column) =>
        column.Sum(block => block.Size.HeightMm) + (BlockGapMm * (column.Length - 1));

    private static double AreaOf(Paper paper) => paper.WidthMm * paper.HeightMm;

    /// <summary>One view alone on the smallest paper that holds it, with a short note above the title block where there is room.</summary>
    public static Sheet Alone(TitleBlock title, View view)
    {
        Box box = view.Bounds();
        Sheet sheet = new(title, Paper.Holding(new Size(box.WidthMm, box.HeightMm)));
        return sheet.Add(view.CentredIn(sheet.Area));
    }
}

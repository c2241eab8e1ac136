using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Sheets.Body;

/// <summary>Puts views under each other and schedules in rows below them, on the smallest paper that holds all.</summary>
internal static class Layout
{
    private const double GapMm = 11;
    private const double ColumnGapMm = 18;

    private readonly record struct Row(IReadOnlyList<Block> Blocks, double HeightMm);

    /// <summary>The sheet.</summary>
    /// <param name="title">Its title block.</param>
    /// <param name="views">Views, from the top down.</param>
    /// <param name="blocks">Schedules and notes, from left to right, then in the next row.</param>
    /// <param name="leastWidthMm">Width to lay the blocks out in, if it is more than the views'.</param>
    public static Sheet Of(
        TitleBlock title,
        IReadOnlyList<View> views,
        IReadOnlyList<Block> blocks,
        double leastWidthMm = 160
    )
    {
        double width = views
            .Select(view => view.Bounds().WidthMm)
            .Append(leastWidthMm)
            .Concat(blocks.Select(block => block.Size.WidthMm))
            .Max();
        Row[] rows = Rows(blocks, width);
        double height =
            views.Sum(view => view.Bounds().HeightMm)
            + rows.Sum(row => row.HeightMm)
            + (GapMm * (views.Count + rows.Length - 1));
        Sheet sheet = new(title, Paper.Holding(new Size(width, height)));
        Box area = sheet.Area;
        double y = area.TopMm;
        foreach (View view in views)
        {
            Box box = view.Bounds();
            double left = area.LeftMm + ((area.WidthMm - box.WidthMm) / 2);
            sheet = sheet.Add(view.TopLeftAt(new Point(left, y)));
            y -= box.HeightMm + GapMm;
        }

        return Add(sheet, Rows(blocks, area.WidthMm), new Point(area.LeftMm, y));
    }

    /// <summary>The same with the schedules in rows right of the views, for long parts on a long sheet.</summary>
    /// <param name="title">Its title block.</param>
    /// <param name="views">Views, from the top down, with a common left edge.</param>
    /// <param name="blocks">Schedules and notes, from left to right, then in the next row.</param>
    /// <param name="columnMm">Width to lay the blocks out in.</param>
    public static Sheet Beside(
        TitleBlock title,
        IReadOnlyList<View> views,
        IReadOnlyList<Block> blocks,
        double columnMm
    )
    {
        Row[] rows = Rows(blocks, columnMm);
        double width = views.Max(view => view.Bounds().WidthMm);
        double height = Math.Max(
            views.Sum(view => view.Bounds().HeightMm + GapMm),
            rows.Sum(row => row.HeightMm + GapMm)
        );
        Sheet sheet = new(title, Paper.Holding(new Size(width + ColumnGapMm + columnMm, height)));
        Box area = sheet.Area;
        Point at = area.TopLeft;
        foreach (View view in views)
        {
            sheet = sheet.Add(view.TopLeftAt(at));
            at -= new Vector(0, view.Bounds().HeightMm + GapMm);
        }

        return Add(sheet, rows, new Point(area.RightMm - columnMm, area.TopMm));
    }

    private static Sheet Add(Sheet sheet, Row[] rows, Point at)
    {
        foreach (Row row in rows)
        {
            double x = at.X;
            foreach (Block block in row.Blocks)
            {
                sheet = sheet.Add(block with { TopLeft = new Point(x, at.Y) });
                x += block.Size.WidthMm + GapMm;
            }

            at -= new Vector(0, row.HeightMm + GapMm);
        }

        return sheet;
    }

    private static Row[] Rows(IReadOnlyList<Block> blocks, double width)
    {
        List<Row> rows = [];
        List<Block> row = [];
        double used = 0;
        foreach (Block block in blocks)
        {
            double need = block.Size.WidthMm + (row.Count > 0 ? GapMm : 0);
            if (row.Count > 0 && used + need > width + 0.01)
            {
                rows.Add(new Row(row, row.Max(each => each.Size.HeightMm)));
                (row, used, need) = ([], 0, block.Size.WidthMm);
            }

            row.Add(block);
            used += need;
        }

        if (row.Count > 0)
        {
            rows.Add(new Row(row, row.Max(each => each.Size.HeightMm)));
        }

        return [.. rows];
    }

    /// <summary>One table as several side by side, each with its head, for many short rows.</summary>
    public static IEnumerable<Table> Split(Table table, int parts, double widthMm)
    {
        int each = (table.Rows.Count + parts - 1) / parts;
        for (int i = 0; i * each < table.Rows.Count; i++)
        {
            yield return table with
            {
                Heading = i == 0 || table.Heading.Length == 0 ? table.Heading : " ",
                Rows = [.. table.Rows.Skip(i * each).Take(each)],
                WidthMm = widthMm,
            };
        }
    }
}

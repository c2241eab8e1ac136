using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Jigs.Stock.Nesting;

namespace Formwright.Jigs.Stock;

/// <summary>
/// Finds what is left of a sheet: first the whole end beyond the cut, then the largest clear rectangle of what is used, again and again
/// (the largest rectangle under a histogram, row by row, on squares of 5 mm; a square that a part touches, grown by the kerf, is not clear).
/// </summary>
internal static class OffcutFinder
{
    private const double CellMm = 5;
    private const int Most = 4;

    /// <summary>The offcuts, largest first.</summary>
    /// <param name="stock">For margin, kerf and the least side.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="parts">What lies on it.</param>
    /// <param name="usedMm">How much of its length is taken.</param>
    public static IReadOnlyList<Offcut> Of(
        StockDesign stock,
        StockSheetDesign sheet,
        IReadOnlyList<PlacedPart> parts,
        double usedMm
    )
    {
        List<Offcut> offcuts = [];
        Box end = new(new Point(usedMm, 0), new Point(sheet.LengthMm, sheet.WidthMm));
        if (Math.Min(end.WidthMm, end.HeightMm) >= stock.OffcutMm)
        {
            offcuts.Add(new Offcut(end));
        }

        Point corner = new(stock.MarginMm, stock.MarginMm);
        int columns = (int)((usedMm - stock.MarginMm) / CellMm);
        int rows = (int)((sheet.WidthMm - (2 * stock.MarginMm)) / CellMm);
        if (columns < 1 || rows < 1)
        {
            return offcuts;
        }

        bool[] taken = Taken(stock, parts, columns, rows);
        for (int i = 0; i < Most; i++)
        {
            (int x, int y, int w, int h) = Largest(taken, columns, rows, stock.OffcutMm);
            if (w == 0)
            {
                break;
            }

            Point from = corner + new Vector(x * CellMm, y * CellMm);
            // By the same sums as the next one's near side, so that offcuts that touch share their bits.
            Point to = corner + new Vector((x + w) * CellMm, (y + h) * CellMm);
            offcuts.Add(new Offcut(new Box(from, to with { X = Math.Min(to.X, usedMm) })));
            // The cut that frees it takes a kerf of its own.
            int cut = (int)Math.Ceiling(stock.KerfMm / CellMm);
            Fill(taken, columns, rows, x - cut, y - cut, x + w + cut, y + h + cut);
        }

        return offcuts;
    }

    private static bool[] Taken(
        StockDesign stock,
        IReadOnlyList<PlacedPart> parts,
        int columns,
        int rows
    )
    {
        bool[] taken = new bool[columns * rows];
        foreach (PlacedPart placed in parts)
        {
            NestOutline own = NestOutline.Of(placed.Part);
            TurnedOutline outline = new(own, placed.AngleRad, stock.KerfMm, CellMm);
            Vector at = placed.Shift - outline.Shift - new Vector(stock.MarginMm, stock.MarginMm);
            for (int row = 0; row < outline.Rows; row++)
            {
                // Rows of the outline need not stand on rows of squares: they touch one or two.
                int low = (int)Math.Floor((at.Y / CellMm) + row + 1e-9);
                int high = (int)Math.Ceiling((at.Y / CellMm) + row + 1 - 1e-9);
                for (int layer = 0; layer < outline.Layers; layer++)
                {
                    double from = outline.From(layer)[row];
                    double to = outline.To(layer)[row];
                    if (from < to)
                    {
                        Fill(
                            taken,
                            columns,
                            rows,
                            (int)Math.Floor((at.X + from) / CellMm),
                            low,
                            (int)Math.Ceiling((at.X + to) / CellMm),
                            high
                        );
                    }
                }
            }
        }

        return taken;
    }

    private static void Fill(bool[] taken, int columns, int rows, int x, int y, int endX, int endY)
    {
        for (int row = Math.Max(0, y); row < Math.Min(rows, endY); row++)
        {
            for (int column = Math.Max(0, x); column < Math.Min(columns, endX); column++)
            {
                taken[(row * columns) + column] = true;
            }
        }
    }

    private static (int X, int Y, int W, int H) Largest(
        bool[] taken,
        int columns,
        int rows,
        double sideMm
    )
    {
        int side = (int)Math.Ceiling(sideMm / CellMm);
        int[] heights = new int[columns + 1];
        Stack<int> rising = new();
        (int, int, int, int) best = default;
        long area = 0;
        for (int row = 0; row < rows; row++)
        {
            rising.Clear();
            for (int column = 0; column <= columns; column++)
            {
                heights[column] =
                    column == columns || taken[(row * columns) + column] ? 0 : heights[column] + 1;
                while (rising.Count > 0 && heights[rising.Peek()] >= heights[column])
                {
                    int h = heights[rising.Pop()];
                    int left = rising.Count > 0 ? rising.Peek() + 1 : 0;
                    int w = column - left;
                    if (Math.Min(w, h) >= side && (long)w * h > area)
                    {
                        area = (long)w * h;
                        best = (left, row - h + 1, w, h);
                    }
                }

                rising.Push(column);
            }
        }

        return best;
    }
}

using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Cuts the full-size views of a sheet into pages of a small format. Neighbours overlap, and the marks on which they are
/// laid belong to the shared content, so that they agree by construction.
/// </summary>
public sealed record TilePlan
{
    /// <summary>How much two neighbours share.</summary>
    public const double OverlapMm = 10;

    private const double AroundMm = 4;

    private TilePlan(DrawnSheet drawn, Paper page, PrintScale printScale, Box area)
    {
        Sheet = drawn;
        Page = page;
        PrintScale = printScale;
        Box window = TileLayout.Window(page, printScale);
        double stepX = window.WidthMm - OverlapMm;
        double stepY = window.HeightMm - OverlapMm;
        Columns = Math.Max(1, (int)Math.Ceiling((area.WidthMm - OverlapMm) / stepX));
        Rows = Math.Max(1, (int)Math.Ceiling((area.HeightMm - OverlapMm) / stepY));
        Vector whole = new((Columns * stepX) + OverlapMm, (Rows * stepY) + OverlapMm);
        Point corner = area.Centre - (0.5 * whole);
        Area = new Box(corner, corner + whole);
        Mark[] content = [.. drawn.Marks.Where(mark => mark.Key != Drawing.Sheet.FrameKey)];
        List<Tile> tiles = [];
        for (int row = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                double left = Area.LeftMm + (column * stepX);
                double top = Area.TopMm - (row * stepY);
                Box seen = Box.Of(left, top - window.HeightMm, left + window.WidthMm, top);
                tiles.Add(
                    new Tile(
                        $"{(char)('A' + row)}{column + 1}",
                        row,
                        column,
                        seen,
                        !TileLayout.Shows(content, seen.Grown(-OverlapMm / 2))
                    )
                );
            }
        }

        Tiles = tiles;
        Content = [.. content, .. TileLayout.MatchMarks(this)];
    }

    /// <summary>The sheet that is cut up.</summary>
    public DrawnSheet Sheet { get; }

    /// <summary>The paper of each page.</summary>
    public Paper Page { get; }

    /// <summary>Correction for the printer; one that prints small leaves less room on a page.</summary>
    public PrintScale PrintScale { get; }

    /// <summary>All that the pages show together, in sheet mm.</summary>
    public Box Area { get; }

    public int Rows { get; }

    public int Columns { get; }

    /// <summary>All tiles by rows, those left out too.</summary>
    public IReadOnlyList<Tile> Tiles { get; }

    /// <summary>The sheet's marks without its frame, and the match marks; sheet mm.</summary>
    public IReadOnlyList<Mark> Content { get; }

    /// <summary>Plans the pages for a sheet, upright or on their side, whichever takes fewer.</summary>
    /// <param name="drawn">The sheet, laid out.</param>
    /// <param name="page">Paper of the pages: A4 or A3.</param>
    /// <param name="printScale">Correction for the printer.</param>
    /// <param name="area">What is to be printed, sheet mm; null takes the views at full size, or all views where none is.</param>
    /// <exception cref="ArgumentException">The sheet has no view and no area was given, or it needs more than 26 rows or columns.</exception>
    public static TilePlan Of(
        DrawnSheet drawn,
        Paper page,
        PrintScale? printScale = null,
        Box? area = null
    )
    {
        ArgumentNullException.ThrowIfNull(drawn);
        ArgumentNullException.ThrowIfNull(page);
        Box wanted = area ?? ViewsOf(drawn).Grown(AroundMm);
        drawn = area is null ? OnlyFullSize(drawn) : drawn;
        if (
            !wanted.Min.IsFinite
            || wanted.IsEmpty
            || Math.Max(wanted.WidthMm, wanted.HeightMm) > 26 * 150
        )
        {
            throw new ArgumentException("Nothing to print in pieces, or too much.", nameof(area));
        }

        PrintScale scale = printScale ?? PrintScale.True;
        TilePlan upright = new(drawn, page, scale, wanted);
        TilePlan turned = new(drawn, page.Turned(), scale, wanted);
        return turned.Count < upright.Count ? turned : upright;
    }

    /// <summary>How many tiles are printed.</summary>
    public int Count => Tiles.Count(tile => !tile.IsEmpty);

    /// <summary>The pages in the order of printing: the key map, then the tiles.</summary>
    public IReadOnlyList<PrintedPage> Pages()
    {
        List<PrintedPage> pages = [TileLayout.KeyMap(this)];
        foreach (Tile tile in Tiles.Where(tile => !tile.IsEmpty))
        {
            pages.Add(TileLayout.Page(this, tile, pages.Count));
        }

        return pages;
    }

    // Schedules and views at another scale are read on the sheet itself: a page would cut them anywhere.
    private static DrawnSheet OnlyFullSize(DrawnSheet drawn)
    {
        Item[] full = [.. drawn.Sheet.Items.Where(IsFullSize)];
        return full.Length > 0 ? (drawn.Sheet with { Items = full }).Draw() : drawn;
    }

    private static bool IsFullSize(Item item)
    {
        Ink ink = new();
        ink.Draw(item, Placement.Identity);
        return ink.Views.Any(view => view.Scale == 1);
    }

    private static Box ViewsOf(DrawnSheet drawn)
    {
        DrawnView[] views = [.. drawn.Views.Where(view => !view.Box.IsEmpty)];
        DrawnView[] full = [.. views.Where(view => view.Scale == 1)];
        return (full.Length > 0 ? full : views).Aggregate(
            Box.Empty,
            static (box, view) => box.With(view.Box)
        );
    }
}

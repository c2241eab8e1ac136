using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Lays out the pages of a <see cref="TilePlan"/>.</summary>
internal static class TileLayout
{
    private const double MarginMm = 8;
    private const double BarStripMm = 8;
    private const double FootMm = 15;
    private const double ArmMm = 4;

    /// <summary>Where a page shows the content, page mm; whole mm, so that the pages are easy to check.</summary>
    public static Box Window(Paper page, PrintScale scale)
    {
        Box reach = scale.Reach(page);
        return Box.Of(
            Math.Ceiling(reach.LeftMm) + MarginMm + BarStripMm,
            Math.Ceiling(reach.BottomMm) + MarginMm + FootMm,
            Math.Floor(reach.RightMm) - MarginMm,
            Math.Floor(reach.TopMm) - MarginMm
        );
    }

    /// <summary>Whether any mark but what clears the ground reaches into a box; lines are tried chord by chord.</summary>
    public static bool Shows(IEnumerable<Mark> marks, Box box) =>
        marks.Any(mark =>
            Ink.BoundsOf(mark).Grown(0.1).Overlaps(box)
            && mark switch
            {
                StrokeMark stroke => Crosses(stroke.Shape, box),
                FillMark fill => fill.Level == Level.Ground
                    && fill.Loops.Any(loop => Crosses(loop, box)),
                _ => true,
            }
        );

    /// <summary>Seams with crosses and the names of both neighbours, in sheet mm.</summary>
    public static IEnumerable<Mark> MatchMarks(TilePlan plan)
    {
        Ink ink = new();
        foreach (Tile tile in plan.Tiles)
        {
            Tile? right = plan.Tiles.FirstOrDefault(t =>
                t.Row == tile.Row && t.Column == tile.Column + 1
            );
            Tile? below = plan.Tiles.FirstOrDefault(t =>
                t.Row == tile.Row + 1 && t.Column == tile.Column
            );
            Box cell = Cell(plan, tile);
            if (right is not null && !(tile.IsEmpty || right.IsEmpty))
            {
                Seam(ink, cell.TopRight, cell.BottomRight, right.Name, tile.Name);
            }

            if (below is not null && !(tile.IsEmpty || below.IsEmpty))
            {
                Seam(ink, cell.BottomLeft, cell.BottomRight, tile.Name, below.Name);
            }
        }

        return ink.Marks();
    }

    public static PrintedPage Page(TilePlan plan, Tile tile, int number)
    {
        Box clip = Window(plan.Page, plan.PrintScale);
        Ink ink = new();
        ink.Stroke(Shape.Rectangle(clip), LineStyle.FineRule);
        TitleBlock title = plan.Sheet.Sheet.Title;
        Foot(
            ink,
            clip,
            Words.Format(
                "tile.name",
                title.Title,
                title.IdentificationNumber,
                number,
                plan.Count,
                tile.Name[..1],
                tile.Name[1..]
            )
        );
        ink.Text(
            tile.Name,
            new(clip.RightMm, clip.BottomMm - FootMm + 1.5),
            TextStyle.Title with
            {
                HeightMm = 7,
            },
            Align.Right
        );
        Vector step = clip.Min - tile.Window.Min;
        return new PrintedPage(
            tile.Name,
            Placement.Identity with
            {
                E = step.X,
                F = step.Y,
            },
            clip,
            ink.Marks()
        );
    }

    public static PrintedPage KeyMap(TilePlan plan)
    {
        Box page = Window(plan.Page, plan.PrintScale);
        Ink ink = new();
        TitleBlock title = plan.Sheet.Sheet.Title;
        Foot(ink, page, $"{title.Title} {title.IdentificationNumber}");
        List<string> texts =
        [
            Words.Of("tile.print"),
            Words.Format("tile.cut", TilePlan.OverlapMm),
            Words.Of("tile.check"),
        ];
        if (plan.Tiles.Any(tile => tile.IsEmpty))
        {
            texts.Add(Words.Of("tile.empty"));
        }

        // Upright: the notes over the map. On its side: left of it.
        bool beside = page.WidthMm > page.HeightMm;
        double width = beside ? 0.33 * page.WidthMm : page.WidthMm - 12;
        Notes notes = new(Words.Of("tile.heading"), texts, width)
        {
            Numbered = true,
            TopLeft = page.TopLeft + new Vector(6, -4),
        };
        notes.Draw(ink, Placement.Identity);
        Box room = Box.Of(
            page.LeftMm + (beside ? width + 20 : 6),
            page.BottomMm + 6,
            page.RightMm - 6,
            beside ? page.TopMm - 4 : notes.Box.BottomMm - 10
        );
        double scale = Math.Min(
            room.WidthMm / plan.Area.WidthMm,
            room.HeightMm / plan.Area.HeightMm
        );
        Placement small = Placement.Of(room.Centre, plan.Area.Centre, scale);
        foreach (Tile tile in plan.Tiles)
        {
            Box cell = Cell(plan, tile);
            Box drawn = new(small.Apply(cell.Min), small.Apply(cell.Max));
            if (tile.IsEmpty)
            {
                continue;
            }

            ink.Stroke(Shape.Rectangle(drawn), LineStyle.Detail);
            ink.Text(
                tile.Name,
                drawn.TopLeft + new Vector(1.5, -1.5),
                TextStyle.Figure,
                rise: Rise.Top,
                clear: true
            );
        }

        Box clip = new(small.Apply(plan.Area.Min), small.Apply(plan.Area.Max));
        return new PrintedPage("", small, clip, ink.Marks());
    }

    /// <summary>The tile up to the middles of its overlaps.</summary>
    private static Box Cell(TilePlan plan, Tile tile)
    {
        double half = TilePlan.OverlapMm / 2;
        Box w = tile.Window;
        return Box.Of(
            w.LeftMm + (tile.Column > 0 ? half : 0),
            w.BottomMm + (tile.Row < plan.Rows - 1 ? half : 0),
            w.RightMm - (tile.Column < plan.Columns - 1 ? half : 0),
            w.TopMm - (tile.Row > 0 ? half : 0)
        );
    }

    /// <summary>A seam; <paramref name="left"/> is named to the left of its direction.</summary>
    private static void Seam(Ink ink, Point from, Point to, string left, string right)
    {
        ink.Stroke(Shape.Line(from, to), LineStyle.Seam);
        Vector along = (to - from) * (1 / from.DistanceTo(to));
        foreach (double share in new[] { 0.08, 0.92 })
        {
            Point at = from.Towards(to, share);
            ink.Stroke(Shape.Line(at - (ArmMm * along), at + (ArmMm * along)), LineStyle.MatchMark);
            ink.Stroke(
                Shape.Line(at - (ArmMm * along.Left), at + (ArmMm * along.Left)),
                LineStyle.MatchMark
            );
            ink.Stroke(Shape.Circle(at, 1.5), LineStyle.MatchMark);
        }

        Point middle = from.Towards(to, 0.5);
        ink.Text(left, middle + (2.6 * along.Left), TextStyle.Body, Align.Centre, Rise.Middle);
        ink.Text(right, middle - (2.6 * along.Left), TextStyle.Body, Align.Centre, Rise.Middle);
    }

    private static void Foot(Ink ink, Box window, string text)
    {
        new ScaleBar(new(window.LeftMm, window.BottomMm - FootMm + 3), IsUpright: false).Draw(
            ink,
            Placement.Identity
        );
        new ScaleBar(new(window.LeftMm - 3, window.BottomMm), IsUpright: true).Draw(
            ink,
            Placement.Identity
        );
        ink.Text(text, new(window.LeftMm, window.BottomMm - FootMm + 9), TextStyle.Body);
    }

    private static bool Crosses(Shape shape, Box box)
    {
        IReadOnlyList<Point> points = shape.Flatten(0.2);
        if (shape.Closed)
        {
            points = [.. points, points[0]];
        }

        return points.Any(box.Contains) || Clipping.Inside(points, box).Any();
    }
}

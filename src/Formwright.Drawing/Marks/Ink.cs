using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Collects marks in sheet mm while items draw themselves. Not for several threads; a sheet makes one each time it is drawn.
/// </summary>
public sealed class Ink
{
    private readonly List<Mark> marks = [];
    private readonly List<SheetFlaw> flaws = [];
    private readonly List<DrawnView> views = [];
    private string? key;

    /// <summary>What has been drawn, the lowest level first; what clears the ground takes the tone of the fill that it lies on.</summary>
    public IReadOnlyList<Mark> Marks()
    {
        FillMark[] ground =
        [
            .. marks
                .OfType<FillMark>()
                .Where(fill => fill is { Level: Level.Ground, Tone: not Tone.Ink }),
        ];
        return
        [
            .. marks
                .Select(mark =>
                    mark is FillMark { Level: Level.Clear } clear
                        ? clear with
                        {
                            Tone = Ground.ToneAt(ground, BoundsOf(clear).Centre),
                        }
                        : mark
                )
                .OrderBy(mark => mark.Level),
        ];
    }

    public IReadOnlyList<SheetFlaw> Flaws => flaws;

    /// <summary>The views with the boxes around all that they drew.</summary>
    public IReadOnlyList<DrawnView> Views => views;

    /// <summary>Draws an item under its own key.</summary>
    public void Draw(Item item, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(item);
        string? outer = key;
        key = item.Key ?? key;
        item.Draw(this, placement);
        key = outer;
    }

    /// <summary>Draws a line along a shape given in sheet mm.</summary>
    public void Stroke(Shape shape, LineStyle style, Level level = Level.Line) =>
        marks.Add(new StrokeMark(shape, style, level, key));

    /// <summary>Fills between closed loops given in sheet mm.</summary>
    public void Fill(
        IReadOnlyList<Shape> loops,
        Tone tone,
        string layer,
        Level level = Level.Ground
    ) => marks.Add(new FillMark(loops, tone, layer, level, key));

    /// <summary>Letters one line of text.</summary>
    /// <param name="text">What it says; an empty text draws nothing.</param>
    /// <param name="at">Where it stands, in sheet mm.</param>
    /// <param name="style">How it is lettered.</param>
    /// <param name="align">Which end of it stands there.</param>
    /// <param name="rise">Which height of it stands there.</param>
    /// <param name="angleRad">Direction of the baseline.</param>
    /// <param name="clear">Clears the lines under it.</param>
    public void Text(
        string text,
        Point at,
        TextStyle style,
        Align align = Align.Left,
        Rise rise = Rise.Baseline,
        double angleRad = 0,
        bool clear = false
    )
    {
        ArgumentNullException.ThrowIfNull(style);
        if (string.IsNullOrWhiteSpace(text))
        {
            return;
        }

        double width = style.WidthMm(text);
        double back =
            align == Align.Left ? 0
            : align == Align.Centre ? width / 2
            : width;
        double down =
            rise == Rise.Baseline ? 0
            : rise == Rise.Middle ? style.HeightMm / 2
            : style.HeightMm;
        Vector along = Vector.At(angleRad);
        Point start = at - (back * along) - (down * along.Left);
        TextMark mark = new(text, start, angleRad, style, Level.Over, key);
        if (clear)
        {
            double margin = 0.3 * style.HeightMm;
            Point low = start - (margin * along) - (margin * along.Left);
            Point high = low + ((style.HeightMm + (2 * margin)) * along.Left);
            Vector run = (width + (2 * margin)) * along;
            Fill(
                [Shape.Polyline([low, low + run, high + run, high], closed: true)],
                Tone.Paper,
                "clear",
                Level.Clear
            );
        }

        marks.Add(mark);
    }

    /// <summary>Notes something that the drawing office would send back.</summary>
    public void Flaw(SheetFlawKind kind, string message, Point? at = null) =>
        flaws.Add(new SheetFlaw(kind, message, at));

    /// <summary>Draws items and returns the box around all that they drew.</summary>
    internal Box Measure(Action draw)
    {
        int from = marks.Count;
        draw();
        Box box = Box.Empty;
        for (int i = from; i < marks.Count; i++)
        {
            box = box.With(BoundsOf(marks[i]));
        }

        return box;
    }

    internal void Add(DrawnView view) => views.Add(view);

    /// <summary>The box around a mark; lines are taken without their width.</summary>
    public static Box BoundsOf(Mark mark) =>
        mark switch
        {
            StrokeMark stroke => stroke.Shape.Bounds(),
            FillMark fill => fill.Loops.Aggregate(
                Box.Empty,
                static (box, loop) => box.With(loop.Bounds())
            ),
            TextMark text => text.Corners()
                .Aggregate(Box.Empty, static (box, corner) => box.With(corner)),
            _ => Box.Empty,
        };
}

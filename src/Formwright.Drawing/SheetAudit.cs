using System.Globalization;
using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>
/// Looks at a sheet as the head of a drawing office would: texts on texts or on outlines, texts and views outside the
/// frame, dimensions of nothing, characters that the face lacks. Independent of how the items lay themselves out: it
/// sees the finished marks only. Boxes of letters are compared by the separating axes of convex polygons.
/// </summary>
public static class SheetAudit
{
    private const double TouchMm = 0.15;
    private const double ChordMm = 0.1;
    private const double NearMm = 3;

    // The tail of a letter may hang below the area.
    private const double TailMm = 1;
    private const double LeastTextMm = 2.5;
    private static readonly HashSet<string> Outlines =
    [
        LineStyle.Outline.Layer,
        LineStyle.Cut.Layer,
        LineStyle.Pocket.Layer,
    ];

    // Grounds that letters may stand on, and the frame, which is looked at by itself.
    private static readonly HashSet<string> Grounds =
    [
        LineStyle.Frame.Layer,
        LineStyle.Hatch.Layer,
        LineStyle.Hair.Layer,
        LineStyle.Guide.Layer,
    ];

    /// <summary>All flaws of a sheet, those that the items reported first; empty for a sheet that may leave the office.</summary>
    public static IReadOnlyList<SheetFlaw> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Of(sheet.Draw());
    }

    /// <inheritdoc cref="Of(Sheet)"/>
    public static IReadOnlyList<SheetFlaw> Of(DrawnSheet drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        List<SheetFlaw> flaws = [.. drawn.Flaws];
        Text[] texts = [.. drawn.Marks.OfType<TextMark>().Select(mark => new Text(mark))];
        OnTexts(texts, flaws);
        OnLines(texts, drawn.Marks, flaws);
        Cleared(texts, drawn.Marks, flaws);
        OffArea(drawn.Sheet, texts, flaws);
        Box frame = drawn.Sheet.Frame;
        Box paper = drawn.Sheet.PaperBox.Grown(-4);
        Box title = drawn.Sheet.TitleBlockBox.Grown(-TouchMm);
        foreach (Text text in texts)
        {
            // The vertical bar's own text stands in the filing border.
            Box limit =
                text.Mark.Style == TextStyle.Small && text.Box.RightMm < frame.LeftMm
                    ? paper
                    : frame;
            if (!limit.Holds(text.Box, TouchMm))
            {
                flaws.Add(new(SheetFlawKind.TextOutsideFrame, text.Mark.Text, text.Mark.Start));
            }

            foreach (char c in text.Mark.Text.Distinct())
            {
                if (!Typeface.Of(text.Mark.Style.Weight).Has(c))
                {
                    string code = ((int)c).ToString("X4", CultureInfo.InvariantCulture);
                    flaws.Add(
                        new(
                            SheetFlawKind.MissingCharacter,
                            $"U+{code} in: {text.Mark.Text}",
                            text.Mark.Start
                        )
                    );
                }
            }
        }

        foreach ((string name, _, Box box) in drawn.Views)
        {
            if (!box.IsEmpty && (!frame.Holds(box, TouchMm) || box.Overlaps(title)))
            {
                flaws.Add(new(SheetFlawKind.ViewOutsideFrame, name, box.Centre));
            }
        }

        return flaws;
    }

    private sealed class Text
    {
        public Text(TextMark mark)
        {
            Mark = mark;
            Corners = mark.Corners();
            Box = Corners.Aggregate(Box.Empty, static (box, corner) => box.With(corner));
        }

        public TextMark Mark { get; }

        public IReadOnlyList<Point> Corners { get; }

        public Box Box { get; }
    }

    private static void OnTexts(Text[] texts, List<SheetFlaw> flaws)
    {
        Text[] sorted = [.. texts.OrderBy(t => t.Box.LeftMm)];
        for (int i = 0; i < sorted.Length; i++)
        {
            for (int k = i + 1; k < sorted.Length; k++)
            {
                if (sorted[k].Box.LeftMm > sorted[i].Box.RightMm)
                {
                    break;
                }

                if (Meet(sorted[i].Corners, sorted[k].Corners))
                {
                    flaws.Add(
                        new(
                            SheetFlawKind.TextOnText,
                            $"'{sorted[i].Mark.Text}' and '{sorted[k].Mark.Text}'",
                            sorted[i].Mark.Start
                        )
                    );
                }
            }
        }
    }

    // A text may stand on any line that it clears, but a part keeps its whole edge: the saw follows it.
    private static void Cleared(Text[] texts, IReadOnlyList<Mark> marks, List<SheetFlaw> flaws)
    {
        (FillMark Mark, Box Box, IReadOnlyList<Point> Corners)[] clears =
        [
            .. marks
                .OfType<FillMark>()
                .Where(mark => mark.Level == Level.Clear)
                .Select(mark => (mark, Ink.BoundsOf(mark), mark.Loops[0].Flatten(ChordMm))),
        ];
        HashSet<FillMark> reported = [];
        foreach (StrokeMark stroke in marks.OfType<StrokeMark>())
        {
            if (!Outlines.Contains(stroke.Layer) || stroke.Level > Level.Line)
            {
                continue;
            }

            foreach ((Point a, Point b, Box box) in Chords(stroke))
            {
                foreach ((FillMark clear, Box ground, IReadOnlyList<Point> corners) in clears)
                {
                    if (ground.Overlaps(box) && !reported.Contains(clear) && Meet(corners, [a, b]))
                    {
                        reported.Add(clear);
                        Point at = ground.Centre;
                        TextMark? text = texts.MinBy(each => each.Box.Centre.DistanceTo(at))?.Mark;
                        // One that stands on the outline itself is told already.
                        if (!flaws.Any(flaw => flaw.At == text?.Start))
                        {
                            flaws.Add(new(SheetFlawKind.OutlineCleared, text?.Text ?? "", at));
                        }
                    }
                }
            }
        }
    }

    // What is drawn on a sheet keeps clear of title block, bars and frame, and is large enough to read.
    private static void OffArea(Sheet sheet, Text[] texts, List<SheetFlaw> flaws)
    {
        Box area = sheet.Area;
        Box open = Box.Of(
            area.LeftMm - NearMm,
            area.BottomMm - TailMm,
            area.RightMm + NearMm,
            area.TopMm + NearMm
        );
        // Left of the title block, where there is room, a drawing may come down to the bar.
        Box beside = sheet.IsCompact
            ? open
            : Box.Of(
                open.LeftMm,
                sheet.BesideTitle.BottomMm,
                sheet.BesideTitle.RightMm,
                open.TopMm
            );
        foreach (Text text in texts.Where(text => text.Mark.Key != Sheet.FrameKey))
        {
            if (text.Mark.Style.HeightMm < LeastTextMm)
            {
                flaws.Add(new(SheetFlawKind.TextSmall, text.Mark.Text, text.Mark.Start));
            }

            // One that leaves the frame is told by itself.
            bool framed = sheet.Frame.Holds(text.Box, TouchMm);
            if (framed && !open.Holds(text.Box) && !beside.Holds(text.Box))
            {
                flaws.Add(new(SheetFlawKind.TextOffArea, text.Mark.Text, text.Mark.Start));
            }
        }
    }

    // No text on an outline; on a thinner line only where the text clears it.
    private static void OnLines(Text[] texts, IReadOnlyList<Mark> marks, List<SheetFlaw> flaws)
    {
        Box[] cleared =
        [
            .. marks
                .OfType<FillMark>()
                .Where(fill => fill.Level == Level.Clear)
                .Select(Ink.BoundsOf)
                .Select(box => box.Grown(TouchMm)),
        ];
        Text[] bare = [.. texts.Where(text => !cleared.Any(box => box.Holds(text.Box)))];
        HashSet<Text> reported = [];
        foreach (StrokeMark stroke in marks.OfType<StrokeMark>())
        {
            bool isOutline = Outlines.Contains(stroke.Layer);
            if (!isOutline && (stroke.Level == Level.Over || Grounds.Contains(stroke.Layer)))
            {
                continue;
            }

            foreach ((Point a, Point b, Box box) in Chords(stroke))
            {
                foreach (Text text in isOutline ? texts : bare)
                {
                    if (
                        text.Box.Grown(TouchMm).Overlaps(box)
                        && !reported.Contains(text)
                        && Meet(text.Corners, [a, b])
                    )
                    {
                        reported.Add(text);
                        flaws.Add(
                            new(
                                isOutline ? SheetFlawKind.TextOnOutline : SheetFlawKind.TextOnLine,
                                text.Mark.Text,
                                text.Mark.Start
                            )
                        );
                    }
                }
            }
        }
    }

    // The chords of a line, each with the box of what it touches.
    private static IEnumerable<(Point A, Point B, Box Box)> Chords(StrokeMark stroke)
    {
        IReadOnlyList<Point> points = stroke.Shape.Flatten(ChordMm);
        int count = stroke.Shape.Closed ? points.Count : points.Count - 1;
        for (int i = 0; i < count; i++)
        {
            Point a = points[i];
            Point b = points[(i + 1) % points.Count];
            yield return (a, b, Box.Empty.With(a).With(b).Grown(TouchMm));
        }
    }

    /// <summary>Whether two convex polygons (or a polygon and a segment) share more than a touch.</summary>
    private static bool Meet(IReadOnlyList<Point> a, IReadOnlyList<Point> b)
    {
        return !Separated(a, b) && !Separated(b, a);

        static bool Separated(IReadOnlyList<Point> edges, IReadOnlyList<Point> other)
        {
            for (int i = 0; i < edges.Count; i++)
            {
                Vector edge = edges[(i + 1) % edges.Count] - edges[i];
                double length = edge.Length;
                if (length < 1e-9)
                {
                    continue;
                }

                Vector normal = edge.Left * (1 / length);
                (double lowA, double highA) = Along(edges, normal);
                (double lowB, double highB) = Along(other, normal);
                if (highA <= lowB + TouchMm || highB <= lowA + TouchMm)
                {
                    // A segment has no thickness: only a true gap separates along its own normal.
                    if (edges.Count > 2 || highA <= lowB || highB <= lowA)
                    {
                        return true;
                    }
                }
            }

            return false;
        }

        static (double Low, double High) Along(IReadOnlyList<Point> points, Vector direction)
        {
            double low = double.PositiveInfinity;
            double high = double.NegativeInfinity;
            foreach (Point point in points)
            {
                double at = (point - Point.Origin).Dot(direction);
                low = Math.Min(low, at);
                high = Math.Max(high, at);
            }

            return (low, high);
        }
    }
}

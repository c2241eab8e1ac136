using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Fields;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>What the sheets of the relief have in common: a plan of the board, and beside it what to do and what is left under the dome.</summary>
internal static class ReliefFrame
{
    public const double ColumnMm = 210;

    /// <summary>The sheet, tiled; its title and headings are named after it.</summary>
    /// <param name="id">Name of the sheet.</param>
    /// <param name="guitar">The instrument.</param>
    /// <param name="plan">Its workboard.</param>
    /// <param name="items">What is drawn, in the workboard's frame.</param>
    /// <param name="table">What stands first beside it.</param>
    /// <param name="steps">What to do.</param>
    public static NamedSheet Of(
        string id,
        Guitar guitar,
        WorkboardPlan plan,
        IReadOnlyList<Item> items,
        Table table,
        IReadOnlyList<string> steps
    ) =>
        new(
            id,
            Composing.WithColumn(
                Titles.Of(guitar, $"sheet.{id}"),
                new View(items, ViewFrame.Workboard) { RotationRad = View.NeckUp },
                table,
                ReliefSections.Clearances(plan, ColumnMm),
                new Notes(SheetsWords.Of[$"{id}.how"], steps, ColumnMm)
                {
                    Numbered = true,
                    Style = TextStyle.Body.Larger,
                },
                Care.AtTheMachine(ColumnMm, TextStyle.Body.Larger)
            ),
            IsTiled: true
        );

    /// <summary>A line of equal depth with its figure on it, from the body's frame to the workboard's.</summary>
    public static IEnumerable<Item> Contour(Contour contour, double joinMm, double figureMm)
    {
        Point[] points = [.. contour.Points.Select(p => new Point(p.X + joinMm, -p.Y))];
        yield return new Line(Shape.Polyline(points, contour.IsClosed), LineStyle.Contour);
        yield return new Label(Figures.Fixed(figureMm, 1), points.MaxBy(p => p.Y))
        {
            Align = Align.Centre,
            Rise = Rise.Middle,
            Clear = true,
            Degrees = 90,
        };
    }

    /// <summary>A place marked with a cross and its depth.</summary>
    public static IEnumerable<Item> Deepest(Point at, double figureMm)
    {
        yield return new Cross(at, 3);
        yield return new Label(Figures.Fixed(figureMm, 2), at)
        {
            ShiftMm = new(4, 2),
            Clear = true,
        };
    }
}

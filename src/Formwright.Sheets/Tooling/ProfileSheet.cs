using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Mark = Formwright.Jigs.Parts.Mark;

namespace Formwright.Sheets.Tooling;

/// <summary>Parts seen from the tail (gauges across the relief, blocks under the bars) at full size, under each other.</summary>
internal static class ProfileSheet
{
    private const double GapMm = 14;

    public static NamedSheet Of(Guitar guitar, string id, IReadOnlyList<Part> parts)
    {
        View[] views =
        [
            .. parts.Select(part => new View([.. Items(part)])
            {
                RotationRad = View.NeckUp,
                Label = SheetsWords.Of.Format("profile.label", part.Name, part.ThicknessMm),
            }),
        ];
        double width = views.Max(view => view.Bounds().WidthMm);
        Notes how = new("", [SheetsWords.Of[$"{id}.how"]], width);
        double height = views.Sum(view => view.Bounds().HeightMm + GapMm) + how.Size.HeightMm;
        Sheet sheet = new(Titles.Of(guitar, $"sheet.{id}"), Paper.Holding(new Size(width, height)));
        Box area = sheet.Area;
        Point at = area.TopLeft;
        foreach (View view in views)
        {
            View placed = view.TopLeftAt(at);
            sheet = sheet.Add(placed);
            at = new Point(at.X, placed.Bounds().BottomMm - GapMm);
        }

        return new NamedSheet(id, sheet.Add(Flow.Down(at, 0, how)), IsTiled: true);
    }

    private static IEnumerable<Item> Items(Part part)
    {
        foreach (Item item in PartItems.Of(part, withWords: false))
        {
            yield return item;
        }

        Box box = Shape.Of(part.Outside).Bounds();
        // A thin block has no room for words within it.
        bool within = box.Max.X - box.Min.X > 12;
        foreach (Mark mark in part.Marks.Where(mark => mark.From == mark.To))
        {
            yield return new Label(mark.Text, within ? mark.To : new Point(box.Max.X, mark.To.Y))
            {
                Align = Align.Centre,
                Rise = within ? Rise.Middle : Rise.Top,
                ShiftMm = within ? new(0, 0) : new(0, -2),
            };
        }

        yield return new LinearDimension(
            new Point(box.Max.X, box.Min.Y),
            new Point(box.Max.X, box.Max.Y),
            Side.Below,
            9
        );
    }
}

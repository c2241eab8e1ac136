using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Mark = Formwright.Jigs.Parts.Mark;

namespace Formwright.Sheets.Tooling;

/// <summary>A sheet for each template of the outline, at full size, one for the placement and one for the gauges over the dome.</summary>
internal static class TemplateSheets
{
    // Fingerboard and fret-slot rule are drawn with the frets.
    private static readonly string[] OfOutline =
    [
        "template-half",
        "template-full",
        "template-mating",
    ];

    public static IEnumerable<NamedSheet> Of(Guitar guitar, Jigs.Tooling tooling) =>
        [
            .. tooling
                .Templates.Where(part => OfOutline.Contains(part.Id))
                .Select(part => One(guitar, part)),
            PlacementSheet.Of(
                guitar,
                tooling.Templates.First(part => part.Id == "template-placement")
            ),
            .. Gauges(guitar, [.. tooling.Templates.Where(IsGauge)]),
        ];

    private static bool IsGauge(Part part) =>
        part.Id.StartsWith("dome-gauge", StringComparison.Ordinal);

    private static IEnumerable<NamedSheet> Gauges(Guitar guitar, Part[] gauges) =>
        gauges.Length > 0 ? [ProfileSheet.Of(guitar, "dome-gauges", gauges)] : [];

    private static NamedSheet One(Guitar guitar, Part part)
    {
        View view = new([.. Items(guitar, part)]) { RotationRad = View.NeckUp, Label = part.Name };
        Sheet sheet = Composing.Alone(Titles.Of(guitar, $"sheet.{part.Id}"), view);
        return new NamedSheet(part.Id, sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Guitar guitar, Part part)
    {
        foreach (Item item in PartItems.Of(part, withWords: false))
        {
            yield return item;
        }

        double from = guitar.JoinMm - 12;
        double to = guitar.TailMm + 12;
        yield return new Line(new Point(from, 0), new Point(to, 0), LineStyle.Centreline);
        foreach (Mark mark in part.Marks.Where(mark => mark.To.Y > 0))
        {
            Point place = mark.From.Towards(mark.To, 1.25);
            yield return new Label(mark.Text, place)
            {
                Align = mark.To.Y > mark.From.Y ? Align.Left : Align.Right,
                Rise = Rise.Middle,
            };
        }

        yield return new LinearDimension(
            new Point(guitar.JoinMm, 0),
            new Point(guitar.TailMm, 0),
            Side.Left,
            10
        );
        // From the hollow side of the edge, just below the waist.
        double below = guitar.Design.Outline.Waist.AtMm + 25;
        yield return new Leader(
            new Point(guitar.JoinMm + below, guitar.Outline.WidthAt(below) / 2),
            new Vector(part.Id == "template-mating" ? -12 : 12, 6),
            SheetsWords.Of["template.edge"]
        );
    }
}

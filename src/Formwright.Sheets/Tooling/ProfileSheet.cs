using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Mark = Formwright.Jigs.Parts.Mark;

namespace Formwright.Sheets.Tooling;

/// <summary>Parts seen from the tail (gauges across the relief, blocks under the bars) at full size, under each other.</summary>
internal static class ProfileSheet
{
    private const double GapMm = 11;
    private const double LeastNotesMm = 170;
    private const double EveryMm = 30;
    private const double FromEndMm = 12;
    private const double CareMm = 184;

    public static NamedSheet Of(Guitar guitar, string id, IReadOnlyList<Part> parts)
    {
        View[] views =
        [
            .. parts.Select(part => new View([.. Items(part)])
            {
                RotationRad = View.NeckUp,
                Label = SheetsWords.Of.Format(
                    part.Id.EndsWith("-long", StringComparison.Ordinal)
                        ? "profile.label-long"
                        : "profile.label",
                    part.Name,
                    part.ThicknessMm
                ),
            }),
        ];
        double width = views.Max(view => view.Bounds().WidthMm);
        string figures = SheetsWords.Of[$"{id}.figures"];
        string use = SheetsWords.Of[$"{id}.how"];
        Notes how = new("", [$"{figures}. {use}"], Math.Max(width, LeastNotesMm));
        Cautions care = Care.WithDust(Math.Min(CareMm, Math.Max(width, LeastNotesMm)));
        double height = views.Sum(view => view.Bounds().HeightMm + GapMm) + how.Size.HeightMm;
        Size size = new(Math.Max(width, LeastNotesMm), height);
        Sheet sheet = new(Titles.Of(guitar, $"sheet.{id}"), Paper.Holding(size));
        // Left of the title block, where there is room; else below.
        bool beside =
            sheet.BesideTitle.WidthMm >= care.Size.WidthMm
            && sheet.BesideTitle.HeightMm >= care.Size.HeightMm;
        if (!beside)
        {
            double more = Composing.BlockGapMm + care.Size.HeightMm;
            sheet = sheet with
            {
                Paper = Paper.Holding(size with { HeightMm = size.HeightMm + more }),
            };
        }

        Box area = sheet.Area;
        Point at = area.TopLeft;
        foreach (View view in views)
        {
            View placed = view.TopLeftAt(at);
            sheet = sheet.Add(placed);
            at = new Point(at.X, placed.Bounds().BottomMm - GapMm);
        }

        sheet = sheet.Add(Flow.Down(at, 0, how));
        Point foot = beside
            ? sheet.BesideTitle.TopLeft
            : at - new Vector(0, how.Size.HeightMm + Composing.BlockGapMm);
        return new NamedSheet(id, sheet.Add(Flow.Down(foot, 0, care)), IsTiled: true);
    }

    // Every 30 mm from the centreline: a block's height over its straight edge, a gauge's depth below the rim.
    private static IEnumerable<Item> Heights(Part part)
    {
        Point[] curve = [.. part.Outside.Vertices.Skip(2).Select(vertex => vertex.Position)];
        double straight = part.Outside.Vertices[0].Position.X;
        bool stands = straight > 0;
        double half = curve[0].Y;
        int count = (int)Math.Floor((half - FromEndMm) / EveryMm);
        double[] across =
        [
            .. stands ? [-half, half] : Array.Empty<double>(),
            .. Enumerable.Range(-count, (2 * count) + 1).Select(i => i * EveryMm),
        ];
        foreach (double y in across)
        {
            double x = At(curve, y);
            double figure = stands ? straight - x : Math.Abs(x);
            if (figure > 0.005)
            {
                yield return new Label(Figures.Fixed(figure, 2), new Point(x, y))
                {
                    Align = y == 0 ? Align.Left : Align.Centre,
                    ShiftMm = new(y == 0 ? 1 : 0, 1.2),
                    Style = TextStyle.SmallFigure,
                };
            }
        }
    }

    // The curve runs from the bass side to the treble side.
    private static double At(Point[] curve, double y)
    {
        int after = Array.FindIndex(curve, point => point.Y <= y + 1e-9);
        if (after <= 0)
        {
            return curve[0].X;
        }

        Point a = curve[after - 1];
        Point b = curve[after];
        return a.X + ((b.X - a.X) * (a.Y - y) / (a.Y - b.Y));
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

        foreach (Item figure in Heights(part))
        {
            yield return figure;
        }

        yield return new LinearDimension(
            new Point(box.Max.X, box.Min.Y),
            new Point(box.Max.X, box.Max.Y),
            Side.Below,
            9
        );
    }
}

using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Sheets.Body;

/// <summary>Every bar and brace of the soundboard from the side at full size: its gauge to the dome and its scooped ends.</summary>
internal static class BraceGaugeSheet
{
    private const double GapMm = 10;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View view = new([.. Items(body)]) { Label = SheetsWords.Of["braces.gauges-view"] };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.brace-gauges"),
            [view],
            [Rises(body), new Notes("", [SheetsWords.Of["braces.gauges-note"]], 150)],
            250
        );
        return new NamedSheet("brace-gauges", sheet, IsTiled: true);
    }

    /// <summary>Braces that are alike, or each other's mirror image, are drawn once.</summary>
    internal static IReadOnlyList<(Brace Brace, string Names)> Groups(BodyPlan body)
    {
        List<(Brace Brace, List<string> Names)> groups = [];
        foreach (Brace brace in body.Soundboard.Braces)
        {
            List<string>? names = groups.FirstOrDefault(group => Alike(group.Brace, brace)).Names;
            if (names is null)
            {
                groups.Add((brace, [brace.Name]));
            }
            else
            {
                names.Add(brace.Name);
            }
        }

        return [.. groups.Select(group => (group.Brace, string.Join(", ", group.Names)))];
    }

    private static bool Alike(Brace a, Brace b) =>
        a.Kind == b.Kind
        && a.Shape == b.Shape
        && Math.Abs(a.LengthMm - b.LengthMm) < 0.01
        && Math.Abs(a.Gauge.MostMm - b.Gauge.MostMm) < 0.01
        && Math.Abs(a.Gauge.MostAtMm - b.Gauge.MostAtMm) < 3;

    private static IEnumerable<Item> Items(BodyPlan body)
    {
        double y = 0;
        foreach ((Brace brace, string names) in Groups(body))
        {
            y -= Math.Max(0, brace.Gauge.MostMm);
            Point at = new(0, y);
            foreach (Item item in GaugeItems.Bar(brace.Gauge, brace.HeightAt, names, at))
            {
                yield return item;
            }

            yield return new Label(
                SheetsWords.Of.Format("braces.figure", brace.LengthMm, brace.Gauge.MostMm),
                at + new Vector(brace.LengthMm + 4, 0)
            )
            {
                Rise = Rise.Top,
                Style = TextStyle.Body,
            };
            y -= brace.Shape.HeightMm + GapMm;
        }
    }

    // Rise over the chord in eighths, so that a gauge can be made without the drawing.
    private static Table Rises(BodyPlan body) =>
        new(
            SheetsWords.Of["braces.rises"],
            [
                new Column(SheetsWords.Of["column.brace"]),
                .. Enumerable.Range(1, 7).Select(i => new Column($"{i}/8", Align.Right, 14)),
                new Column(SheetsWords.Of["column.mean-radius"], Align.Right, 30),
            ],
            [
                .. Groups(body)
                    .Select(group =>
                        (IReadOnlyList<string>)
                            [
                                group.Names,
                                .. Enumerable
                                    .Range(1, 7)
                                    .Select(i =>
                                        Figures.Fixed(
                                            group.Brace.Gauge.RiseAt(group.Brace.LengthMm * i / 8),
                                            2
                                        )
                                    ),
                                double.IsFinite(group.Brace.Gauge.MeanRadiusMm)
                                    ? Figures.Fixed(group.Brace.Gauge.MeanRadiusMm, 0)
                                    : SheetsWords.Of["braces.flat"],
                            ]
                    ),
            ]
        )
        {
            WidthMm = 230,
        };
}

using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Parts;

namespace Formwright.Sheets.Tooling;

/// <summary>The template that places bars, rosette and bridge on the soundboard, at full size.</summary>
internal static class PlacementSheet
{
    private const double ColumnMm = 150;

    public static NamedSheet Of(Guitar guitar, Part part)
    {
        View view = new([.. Items(guitar, part)]) { RotationRad = View.NeckUp, Label = part.Name };
        Sheet sheet = Composing.WithColumn(
            Titles.Of(guitar, $"sheet.{part.Id}"),
            view,
            new Notes(
                SheetsWords.Of["placement.how"],
                [
                    SheetsWords.Of["placement.how-1"],
                    SheetsWords.Of.Format(
                        "placement.how-2",
                        guitar.Design.Rosette.PilotMm,
                        guitar.Design.Soundhole.RadiusMm
                    ),
                    SheetsWords.Of["placement.how-3"],
                    SheetsWords.Of["placement.how-4"],
                ],
                ColumnMm
            )
            {
                Numbered = true,
                Style = TextStyle.Body.Larger,
            }
        );
        return new NamedSheet(part.Id, sheet, IsTiled: true);
    }

    private static IEnumerable<Item> Items(Guitar guitar, Part part)
    {
        foreach (Item item in PartItems.Of(part, withWords: false))
        {
            yield return item;
        }

        double join = guitar.JoinMm;
        Point hole = new(join + guitar.Design.Soundhole.AtMm, 0);
        yield return new Line(
            Shape.Circle(hole, guitar.Design.Soundhole.RadiusMm),
            LineStyle.Hidden
        );
        foreach (RosetteRingDesign ring in guitar.Design.Rosette.Rings)
        {
            yield return new Line(Shape.Circle(hole, ring.OuterMm), LineStyle.Hidden);
        }

        yield return new OrdinateDimensions(
            new Point(join, 0),
            [
                .. Windows(part),
                new Station(hole, SheetsWords.Of["station.soundhole"]),
                new Station(new Point(guitar.TailMm, 0), SheetsWords.Of["station.tail"]),
            ],
            Side.Left,
            (guitar.Design.Outline.LowerBout.WidthMm / 2) + 14
        ).Larger;
    }

    // Both edges of each window, the upper one with its name: the bridge's lies across the centreline.
    private static IEnumerable<Station> Windows(Part part)
    {
        foreach (
            Box window in part
                .Insides.Select(inside => Shape.Of(inside).Bounds())
                .DistinctBy(box => Math.Round(box.Min.X, 6))
        )
        {
            bool isBridge = window.Min.Y < 0 && window.Max.Y > 0;
            yield return new Station(
                new Point(window.Min.X, 0),
                SheetsWords.Of[isBridge ? "soundboard.bridge" : "station.bar"]
            );
            yield return new Station(new Point(window.Max.X, 0), "");
        }
    }
}

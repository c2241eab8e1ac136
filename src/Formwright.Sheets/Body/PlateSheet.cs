using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Fields.Plates;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Plates;

namespace Formwright.Sheets.Body;

/// <summary>What the strings do to the soundboard: lines of equal rise, the run along the centreline, how the bridge moves and how sure that is.</summary>
internal static class PlateSheet
{
    private const double WidthMm = 168;

    private static readonly double[] Steps = [1, 2, 5, 10];

    public static NamedSheet Of(
        Guitar guitar,
        BodyPlan body,
        NeckAndAction action,
        SoundboardPlate plate,
        BridgeMotion motion,
        PlateShape shape
    )
    {
        double most = shape.Rises.Max(Math.Abs);
        double step = Step(most);
        View view = new(
            [
                .. ShapeItems.Board(guitar, withBraces: true),
                .. ShapeItems.Braces(body),
                .. ShapeItems.Lines(
                    guitar,
                    shape,
                    step,
                    (int)(most / step) + 1,
                    mm => Figures.Fixed(mm, step < 0.01 ? 3 : 2)
                ),
                new BassTreble(ViewFrame.Front, 34, guitar.Design.Outline.UpperBout.WidthMm * 0.22),
            ],
            ViewFrame.Front
        )
        {
            RotationRad = View.NeckUp,
            Scale = 0.4,
            Label = SheetsWords.Of["plate.view"],
        };
        Sheet sheet = Composing.WithColumnAcross(
            Titles.Of(guitar, "sheet.plate", "document.check"),
            view,
            Section(guitar, shape),
            Bridge(action, motion),
            About(plate)
        );
        return new NamedSheet("plate", sheet, IsTiled: false);
    }

    // 1, 2 or 5 of a power of ten, so that some six lines stand on each side.
    private static double Step(double most)
    {
        double rough = Math.Max(most, 1e-6) / 6;
        double ten = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return Steps.Select(each => each * ten).First(each => each >= rough);
    }

    private static Plot Section(Guitar guitar, PlateShape shape)
    {
        double length = guitar.Outline.BodyLengthMm;
        SoundholeDesign hole = guitar.Design.Soundhole;
        List<Point> before = [];
        List<Point> after = [];
        for (double u = 0; u <= length; u += 4)
        {
            if (Math.Abs(u - hole.AtMm) > hole.RadiusMm)
            {
                (u < hole.AtMm ? before : after).Add(new Point(u, shape.HeightAt(new Point(u, 0))));
            }
        }

        Point bridge = SoundboardPlan.BridgeMiddle(guitar.Design);
        return new Plot(
            SheetsWords.Of["plate.section"],
            PlotAxis.Around(SheetsWords.Of["plate.from-heel"], [0, length]),
            PlotAxis.Around(
                SheetsWords.Of["plate.rise-mm"],
                [.. before.Concat(after).Select(at => at.Y), 0]
            ),
            [new PlotSeries(before), new PlotSeries(after)],
            new Size(WidthMm, 62)
        )
        {
            Marked = [new Point(bridge.X, shape.HeightAt(bridge))],
        };
    }

    private static Table Bridge(NeckAndAction action, BridgeMotion motion)
    {
        IReadOnlyList<string> Row(string key, string value, string unsure = "") =>
            [SheetsWords.Of[key], value, unsure];
        double coupleNm = motion.CoupleNmm / 1000;
        return new Table(
            SheetsWords.Of["plate.bridge"],
            [
                new Column(""),
                new Column("", Align.Right, 30) { Strong = true },
                new Column(SheetsWords.Of["column.uncertainty"], Align.Right, 42),
            ],
            [
                Row("plate.pull", $"{motion.PullN:0} N"),
                Row("plate.couple", $"{Figures.Fixed(coupleNm, 2)} N·m"),
                Row(
                    "plate.rotation",
                    $"{Figures.Fixed(motion.RotationDeg, 2)}°",
                    $"{Figures.Fixed(motion.RotationUncertaintyDeg, 2)}°"
                ),
                Row("plate.rotation-hinged", $"{Figures.Fixed(motion.HingedRotationDeg, 2)}°"),
                Row("plate.rotation-clamped", $"{Figures.Fixed(motion.ClampedRotationDeg, 2)}°"),
                Row(
                    "plate.rise",
                    $"{Figures.Fixed(motion.RiseMm, 2)} mm",
                    $"{Figures.Fixed(motion.RiseUncertaintyMm, 2)} mm"
                ),
                Row(action.BridgeMotion is null ? "plate.not-fed" : "plate.fed", "", ""),
            ]
        )
        {
            WidthMm = WidthMm,
        };
    }

    private static Notes About(SoundboardPlate plate) =>
        new(
            "",
            [
                SheetsWords.Of[
                    plate.Guitar.Design.Plate.Rim == PlateRim.Clamped
                        ? "plate.shape-clamped"
                        : "plate.shape-hinged"
                ],
                SheetsWords.Of["plate.leaves-out"],
            ],
            WidthMm
        );
}

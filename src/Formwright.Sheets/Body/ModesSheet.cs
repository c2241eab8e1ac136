using System.Globalization;
using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Fields.Plates;
using Formwright.Instrument;
using Formwright.Instrument.Plates;

namespace Formwright.Sheets.Body;

/// <summary>Pictures of the lowest modes of the soundboard, and the air of the box.</summary>
internal static class ModesSheet
{
    private const double AcrossMm = 9;
    private const double DownMm = 7;
    private const double ColumnMm = 126;
    private const int Columns = 5;
    private static readonly double[] Scales = [0.2, 1 / 7.5, 0.1];

    public static NamedSheet Of(Guitar guitar, PlateTones tones)
    {
        (View[] views, Paper paper) = Fitted(guitar, tones);
        double width = views.Max(view => view.Bounds().WidthMm) + AcrossMm;
        double height = views.Max(view => view.Bounds().HeightMm) + DownMm;
        Block[] blocks = [Table(tones), Air(tones), About(tones)];
        Sheet sheet = new(Titles.Of(guitar, "sheet.modes", "document.check"), paper);
        Box area = sheet.Area;
        width = Math.Max(width, (area.WidthMm - ColumnMm) / Columns);
        for (int i = 0; i < views.Length; i++)
        {
            Point corner = new(
                area.LeftMm + (width * (i % Columns)),
                area.TopMm - (height * (i / Columns))
            );
            sheet = sheet.Add(views[i].TopLeftAt(corner));
        }

        return new NamedSheet(
            "modes",
            sheet.Add(
                Flow.Down(
                    new Point(area.LeftMm + (Columns * width), area.TopMm),
                    Composing.BlockGapMm,
                    blocks
                )
            ),
            IsTiled: false
        );
    }

    // On the smallest paper, as large as it holds; the smallest scale on whatever holds that.
    private static (View[] Views, Paper Paper) Fitted(Guitar guitar, PlateTones tones)
    {
        View[] pictures = new View[tones.Modes.Count];
        Parallel.For(0, pictures.Length, i => pictures[i] = Picture(guitar, tones.Modes[i], i + 1));
        int rows = (pictures.Length + Columns - 1) / Columns;
        Size need = default;
        foreach (Paper paper in (Paper[])[Paper.A3, Paper.A2])
        {
            Box area = new Sheet(TitleBlock.Empty, paper.Turned()).Area;
            foreach (double scale in Scales)
            {
                Box one = (pictures[0] with { Scale = scale }).Bounds();
                need = new(
                    (Columns * (one.WidthMm + AcrossMm)) + ColumnMm,
                    (rows * (one.HeightMm + DownMm)) - DownMm
                );
                if (need.WidthMm <= area.WidthMm && need.HeightMm <= area.HeightMm)
                {
                    return (At(scale), paper.Turned());
                }
            }
        }

        return (At(Scales[^1]), Composing.Lying(need));

        View[] At(double scale) => [.. pictures.Select(view => view with { Scale = scale })];
    }

    private static View Picture(Guitar guitar, PlateMode mode, int number)
    {
        // The sign of a mode is nobody's choice: the bridge's side that moves more goes up.
        bool flip = mode.SweptMm2 < 0;
        return new View(
            [
                .. ShapeItems.Board(guitar, withBraces: false),
                .. ShapeItems.Lines(guitar, mode.Shape, 0.2, 4, flip: flip),
            ],
            ViewFrame.Front
        )
        {
            RotationRad = View.NeckUp,
            Label = string.Create(
                CultureInfo.CurrentCulture,
                $"{number} · {mode.FrequencyHz:0} Hz"
            ),
        };
    }

    private static Table Table(PlateTones tones) =>
        new(
            SheetsWords.Of["modes.table"],
            [
                new Column(SheetsWords.Of["column.mode-number"]),
                new Column(SheetsWords.Of["column.hz"], Align.Right, 24) { Strong = true },
                new Column(SheetsWords.Of["column.mass"], Align.Right, 24),
                new Column(SheetsWords.Of["column.piston"], Align.Right, 30),
            ],
            [
                .. tones.Modes.Select(
                    (mode, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{i + 1}",
                                Figures.Fixed(mode.FrequencyHz, 0),
                                Figures.Fixed(1000 * mode.MassKg, 0),
                                Figures.Fixed(Math.Abs(mode.SweptMm2) / 100, 0),
                            ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
        };

    private static Table Air(PlateTones tones)
    {
        IReadOnlyList<string> Row(string key, double hinged, double clamped) =>
            [SheetsWords.Of[key], Figures.Fixed(hinged, 0), Figures.Fixed(clamped, 0)];
        return new Table(
            SheetsWords.Of.Format("modes.air", tones.VolumeL),
            [
                new Column(""),
                new Column(SheetsWords.Of["column.hinged"], Align.Right, 24),
                new Column(SheetsWords.Of["column.clamped"], Align.Right, 28),
            ],
            [
                Row("modes.board", tones.Hinged.BoardHz, tones.Clamped.BoardHz),
                Row("modes.air-alone", tones.AirHz, tones.AirHz),
                Row("modes.low", tones.Hinged.LowHz, tones.Clamped.LowHz),
                Row("modes.high", tones.Hinged.HighHz, tones.Clamped.HighHz),
            ]
        )
        {
            WidthMm = ColumnMm,
        };
    }

    private static Notes About(PlateTones tones) =>
        new(
            "",
            [
                SheetsWords.Of[
                    tones.Rim == RimSupport.Clamped ? "modes.rim-clamped" : "modes.rim-hinged"
                ],
                SheetsWords.Of["modes.lines"],
                SheetsWords.Of["plate.leaves-out"],
                .. tones.Converged
                    ? Array.Empty<string>()
                    : [SheetsWords.Of["modes.not-converged"]],
            ],
            ColumnMm
        );
}

using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Boards;

namespace Formwright.Sheets.Body;

/// <summary>The spectrum of a tap, with its notes.</summary>
public static class TapSheet
{
    private const double WidthMm = 168;

    /// <summary>The sheet.</summary>
    /// <param name="guitar">For the title block.</param>
    /// <param name="spectrum">What was found in the recording.</param>
    /// <param name="recording">Name of the recording, as the maker knows it.</param>
    public static NamedSheet Of(Guitar guitar, TapSpectrum spectrum, string recording)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(spectrum);
        ArgumentNullException.ThrowIfNull(recording);
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.tap", "document.check"),
            [],
            [Curve(spectrum, recording), Notes(spectrum), How(spectrum)],
            WidthMm
        );
        return new NamedSheet("tap", sheet, IsTiled: false);
    }

    private static Plot Curve(TapSpectrum spectrum, string recording)
    {
        double last =
            spectrum.Peaks.Count > 0
                ? spectrum.Peaks[^1].FrequencyHz * 1.5
                : spectrum.FrequenciesHz.DefaultIfEmpty(100).Max();
        Point[] points =
        [
            .. spectrum
                .FrequenciesHz.Zip(spectrum.LevelsDb, (f, db) => new Point(f, db))
                .Where(at => at.X <= last),
        ];
        return new Plot(
            SheetsWords.Of.Format("tap.plot", recording),
            PlotAxis.Around(SheetsWords.Of["tap.frequency"], [0, last]),
            new PlotAxis(SheetsWords.Of["tap.level"], Lowest(spectrum), 0),
            [new PlotSeries(points), Floor(spectrum, last)],
            new Size(WidthMm, 110)
        )
        {
            Marked = [.. spectrum.Peaks.Select(peak => new Point(peak.FrequencyHz, peak.LevelDb))],
        };
    }

    // Ten dB and the next round figure under the noise.
    private static double Lowest(TapSpectrum spectrum) =>
        Math.Clamp(10 * Math.Floor((spectrum.FloorDb - 10) / 10), -120, -50);

    private static PlotSeries Floor(TapSpectrum spectrum, double last)
    {
        double floor = spectrum.FloorDb;
        return new PlotSeries([new(0, floor), new(last, floor)]) { Style = LineStyle.Hair };
    }

    private static Table Notes(TapSpectrum spectrum) =>
        new(
            SheetsWords.Of["tap.notes"],
            [
                new Column(SheetsWords.Of["column.hz"], Align.Right, 20) { Strong = true },
                new Column(SheetsWords.Of["column.level"], Align.Right, 20),
                new Column(SheetsWords.Of["column.loss"], Align.Right, 26),
                new Column(SheetsWords.Of["column.mode"], Align.Left, 70),
            ],
            [
                .. spectrum.Peaks.Select(peak =>
                    (IReadOnlyList<string>)
                        [
                            Figures.Fixed(peak.FrequencyHz, 1),
                            $"{Figures.Fixed(peak.LevelDb, 0)} dB",
                            double.IsFinite(peak.LossFactor) ? $"{peak.LossFactor:0.000}" : "–",
                            "",
                        ]
                ),
            ]
        )
        {
            WidthMm = WidthMm,
        };

    private static Notes How(TapSpectrum spectrum) =>
        new(
            "",
            [
                SheetsWords.Of.Format("tap.resolution", spectrum.ResolutionHz),
                SheetsWords.Of["tap.how"],
            ],
            WidthMm
        );
}

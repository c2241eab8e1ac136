using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Wood;

namespace Formwright.Sheets.Body;

/// <summary>For the wall of the shop: what the wood does as the humidity changes, and at what humidity to glue.</summary>
internal static class HumiditySheet
{
    private const double WidthMm = 249;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        WoodPlan wood = body.Wood;
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.humidity", "document.check"),
            [],
            [Rule(wood), Rises(wood), Rows(wood), Arches(wood), Parts(wood)],
            WidthMm
        );
        return new NamedSheet("humidity", sheet, IsTiled: false);
    }

    private static Notes Rule(WoodPlan wood) =>
        new(
            SheetsWords.Of.Format("humidity.rule", wood.GluePercent),
            [
                SheetsWords.Of.Format(
                    "humidity.why",
                    wood.Dry.HumidityPercent,
                    wood.Wet.HumidityPercent,
                    wood.BestGluePercent,
                    wood.DampestGluePercent,
                    wood.Shop.TemperatureC
                ),
            ],
            WidthMm
        )
        {
            Style = TextStyle.Body.Larger,
        };

    private static Plot Rises(WoodPlan wood)
    {
        BarArch[] bars = [.. wood.SoundboardBars.Concat(wood.BackBars)];
        PlotSeries[] series =
        [
            .. bars.Select(bar => new PlotSeries(
                [
                    .. Enumerable
                        .Range(0, 61)
                        .Select(i => 20.0 + i)
                        .Select(humidity => new Point(
                            humidity,
                            bar.Arch.In(new Air(wood.Shop.TemperatureC, humidity)).RiseMm
                        )),
                ],
                bar.Name
            )),
        ];
        double[] all = [0, .. series.SelectMany(each => each.Points).Select(at => at.Y)];
        PlotAxis rise = PlotAxis.Around(SheetsWords.Of["humidity.rise-axis"], all);
        return new Plot(
            SheetsWords.Of["humidity.plot"],
            new PlotAxis(SheetsWords.Of["humidity.axis"], 20, 80),
            rise,
            series,
            new Size(WidthMm, 120)
        )
        {
            Zones =
            [
                Box.Of(
                    wood.Dry.HumidityPercent,
                    rise.From,
                    Math.Max(wood.Wet.HumidityPercent, wood.Dry.HumidityPercent + 0.1),
                    rise.From + ((rise.To - rise.From) * 0.03)
                ),
            ],
            Marked =
            [
                .. bars.Select(bar => new Point(wood.Shop.HumidityPercent, bar.Glued.RiseMm)),
            ],
        };
    }

    private static Table Rows(WoodPlan wood) =>
        new(
            SheetsWords.Of.Format("humidity.table", wood.Shop.HumidityPercent),
            [
                new Column(SheetsWords.Of["column.humidity"], Align.Right, 16),
                new Column(SheetsWords.Of["column.moisture"], Align.Right, 18) { Strong = true },
                new Column(SheetsWords.Of["column.soundboard"], Align.Right, 22),
                new Column(SheetsWords.Of["column.back"], Align.Right, 18),
                new Column(SheetsWords.Of["column.fingerboard"], Align.Right, 20),
            ],
            [
                .. wood.Humidity.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            $"{row.HumidityPercent:0} %",
                            $"{row.MoisturePercent:0.0} %",
                            Signed(row.SoundboardMm),
                            Signed(row.BackMm),
                            Signed(row.FingerboardMm),
                        ]
                ),
            ]
        );

    private static string Signed(double mm) =>
        Math.Abs(mm) < 0.005
            ? "0"
            : mm.ToString("+0.00;−0.00", System.Globalization.CultureInfo.CurrentCulture);

    private static Table Arches(WoodPlan wood) =>
        new(
            SheetsWords.Of["humidity.arches"],
            [
                new Column(SheetsWords.Of["column.bar"]),
                new Column(
                    SheetsWords.Of.Format("column.in-dry", wood.Dry.HumidityPercent),
                    Align.Right,
                    24
                ),
                new Column(SheetsWords.Of["column.as-glued"], Align.Right, 22) { Strong = true },
                new Column(
                    SheetsWords.Of.Format("column.in-wet", wood.Wet.HumidityPercent),
                    Align.Right,
                    24
                ),
                new Column(SheetsWords.Of["column.pull"], Align.Right, 26),
            ],
            [
                .. wood
                    .SoundboardBars.Concat(wood.BackBars)
                    .Select(bar =>
                        (IReadOnlyList<string>)
                            [
                                bar.Name,
                                Figures.Fixed(bar.Dry.RiseMm, 1),
                                Figures.Fixed(bar.Glued.RiseMm, 1),
                                Figures.Fixed(bar.Wet.RiseMm, 1),
                                $"{Figures.Fixed(bar.Dry.PlatePullMPa, 1)} MPa",
                            ]
                    ),
            ]
        );

    private static Table Parts(WoodPlan wood) =>
        new(
            SheetsWords.Of.Format("humidity.parts", wood.Shop.HumidityPercent),
            [
                new Column(""),
                new Column(SheetsWords.Of["column.mm"], Align.Right, 14),
                new Column(
                    SheetsWords.Of.Format("column.in-dry", wood.Dry.HumidityPercent),
                    Align.Right,
                    22
                ),
                new Column(
                    SheetsWords.Of.Format("column.in-wet", wood.Wet.HumidityPercent),
                    Align.Right,
                    22
                ),
            ],
            [
                .. wood.Movements.Select(part =>
                    (IReadOnlyList<string>)
                        [
                            InstrumentWords.Of[$"part.{part.Part}"],
                            Figures.Mm(part.DimensionMm),
                            Signed(part.DryMm),
                            Signed(part.WetMm),
                        ]
                ),
            ]
        );
}

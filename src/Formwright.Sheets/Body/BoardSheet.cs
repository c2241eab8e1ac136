using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body;
using Formwright.Instrument.Wood;

namespace Formwright.Sheets.Body;

/// <summary>The soundboard's wood: what was measured, what the table says, and how thick this board must be. Also the species of every part with their sources.</summary>
internal static class BoardSheet
{
    private const double WidthMm = 168;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.board", "document.check"),
            [],
            [
                Board(guitar, body.Board),
                Thickness(body.Wood.Thickness),
                Woods(guitar),
                new Notes("", [SheetsWords.Of["board.note"]], WidthMm),
                new Cautions(
                    [SheetsWords.Of["caution.dust"], SheetsWords.Of["caution.cites"]],
                    WidthMm
                ),
            ],
            WidthMm
        );
        return new NamedSheet("board", sheet, IsTiled: false);
    }

    private static Table Board(Guitar guitar, BoardMeasure measure)
    {
        Timber timber = measure.Timber;
        Timber average = Timber.Of(
            guitar.Design.Wood.Soundboard with
            {
                DensityKgPerM3 = null,
                ModulusLongGPa = null,
                ModulusCrossGPa = null,
                ModulusShearGPa = null,
            }
        );
        string sure = measure.LongUncertaintyShare is { } share
            ? SheetsWords.Of.Format("board.uncertainty", 100 * share)
            : "";
        return new Table(
            SheetsWords.Of.Format("board.wood", timber.Figures.Name),
            [
                new Column(""),
                new Column(SheetsWords.Of["column.this-board"], Align.Right, 30) { Strong = true },
                new Column(SheetsWords.Of["column.average"], Align.Right, 26),
                new Column("", Align.Left, 42),
            ],
            [
                Row(
                    "board.density",
                    timber.DensityKgPerM3,
                    average.DensityKgPerM3,
                    "0",
                    "kg/m³",
                    timber.DensityMeasured,
                    ""
                ),
                Row(
                    "board.long",
                    timber.ModulusLongMPa / 1000,
                    average.ModulusLongMPa / 1000,
                    "0.00",
                    "GPa",
                    timber.LongMeasured,
                    sure
                ),
                Row(
                    "board.cross",
                    timber.ModulusAcrossMPa / 1000,
                    average.ModulusAcrossMPa / 1000,
                    "0.00",
                    "GPa",
                    timber.AcrossMeasured,
                    ""
                ),
                Row(
                    "board.shear",
                    timber.ShearMPa / 1000,
                    average.ShearMPa / 1000,
                    "0.00",
                    "GPa",
                    timber.ShearMeasured,
                    ""
                ),
            ]
        )
        {
            WidthMm = WidthMm,
        };
    }

    private static string[] Row(
        string key,
        double mine,
        double average,
        string format,
        string unit,
        bool measured,
        string more
    ) =>
        [
            SheetsWords.Of[key],
            $"{mine.ToString(format, System.Globalization.CultureInfo.CurrentCulture)} {unit}",
            $"{average.ToString(format, System.Globalization.CultureInfo.CurrentCulture)}",
            SheetsWords.Of[measured ? "board.measured" : "board.from-table"] + more,
        ];

    private static Table Thickness(BoardThickness thickness) =>
        new(
            SheetsWords.Of["board.thickness"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.target"], Align.Right, 32),
                new Column(SheetsWords.Of["column.thickness"], Align.Right, 30) { Strong = true },
            ],
            [
                [
                    SheetsWords.Of["board.same-long"],
                    $"{thickness.TargetLongNm:0.00} N·m",
                    $"{Figures.Fixed(thickness.ForLongMm, 2)} mm",
                ],
                [
                    SheetsWords.Of["board.same-cross"],
                    $"{thickness.TargetCrossNm:0.00} N·m",
                    $"{Figures.Fixed(thickness.ForCrossMm, 2)} mm",
                ],
                [
                    SheetsWords.Of["board.same-both"],
                    "",
                    $"{Figures.Fixed(thickness.ForBothMm, 2)} mm",
                ],
                [
                    SheetsWords.Of["board.same-mass"],
                    $"{thickness.TargetMassG:0} g",
                    $"{Figures.Fixed(thickness.ForMassMm, 2)} mm",
                ],
            ]
        )
        {
            WidthMm = WidthMm,
        };

    private static Table Woods(Guitar guitar)
    {
        var wood = guitar.Design.Wood;
        (string Key, Design.Sections.PartWoodDesign Part)[] parts =
        [
            ("soundboard", wood.Soundboard),
            ("braces", wood.Braces),
            ("back", wood.Back),
            ("back-bars", wood.BackBars),
            ("ribs", wood.Ribs),
            ("linings", wood.Linings),
            ("blocks", wood.Blocks),
            ("neck", wood.Neck),
            ("fingerboard", wood.Fingerboard),
            ("bridge", wood.Bridge),
        ];
        return new Table(
            SheetsWords.Of["board.woods"],
            [
                new Column(""),
                new Column("", Align.Left, 38),
                new Column("kg/m³", Align.Right, 14),
                new Column("E, GPa", Align.Right, 14),
                new Column(SheetsWords.Of["column.across-change"], Align.Right, 26),
            ],
            [
                .. parts.Select(part =>
                {
                    Timber timber = Timber.Of(part.Part);
                    return (IReadOnlyList<string>)
                        [
                            SheetsWords.Of[$"wood.{part.Key}"],
                            timber.Figures.Name,
                            $"{timber.DensityKgPerM3:0}",
                            $"{timber.ModulusLongMPa / 1000:0.0}",
                            $"{timber.AcrossPerPercent * 100:0.000} %",
                        ];
                }),
            ]
        )
        {
            WidthMm = WidthMm,
        };
    }
}

using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs.BoardChecks;
using Formwright.Sheets.Body;

namespace Formwright.Sheets.Tooling;

/// <summary>
/// What to do about a ramp that is off: the shim under the neck at full size with its thickness at nut and frets, or the same for what is
/// planed off; what was found; and what saddle and action become if it is left.
/// </summary>
public static class ShimSheet
{
    private const double ColumnMm = 130;
    private const double SideScale = 0.2;
    private const double ThickOnSheetMm = 14;
    private const double LabelInsetMm = 3;

    /// <summary>A sheet for the shim and one for what is planed off, as far as they are needed.</summary>
    public static IReadOnlyList<NamedSheet> Of(Guitar guitar, BoardCheck check)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(check);
        List<NamedSheet> sheets = [];
        if (check.Shim is { } shim)
        {
            sheets.Add(One(guitar, check, shim, "shim"));
        }

        if (check.Plane is { } plane)
        {
            sheets.Add(One(guitar, check, plane, "plane"));
        }

        return sheets;
    }

    private static NamedSheet One(Guitar guitar, BoardCheck check, Taper taper, string kind)
    {
        View plan = new([.. Plan(guitar, taper)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
        };
        Block[] blocks =
        [
            Thickness(taper, kind),
            new Notes(SheetsWords.Of["shim.found"], [.. Found(check)], ColumnMm),
            new Notes(SheetsWords.Of["shim.do"], [.. How(check, kind)], ColumnMm)
            {
                Numbered = true,
            },
        ];
        View side = new([.. Side(taper)], ViewFrame.Section)
        {
            Scale = SideScale,
            Heights = HeightsFor(taper.MostMm),
            Label = SheetsWords.Of["shim.side"],
        };
        return new NamedSheet(
            kind,
            Composing.WithColumn(
                Titles.Of(guitar, $"sheet.{kind}", "document.check"),
                plan,
                [new ViewBlock(side), .. blocks]
            ),
            IsTiled: true
        );
    }

    private static IEnumerable<Item> Plan(Guitar guitar, Taper taper)
    {
        double half = guitar.Design.Workboard.NeckWidthMm / 2;
        yield return new Region(Shape.Rectangle(Box.Of(0, -half, taper.JoinMm, half)))
        {
            Edge = LineStyle.Outline,
        };
        yield return new Line(
            new Point(-8, 0),
            new Point(taper.JoinMm + 8, 0),
            LineStyle.Centreline
        );
        foreach (TaperRow row in taper.Rows)
        {
            yield return new Line(
                new Point(row.XMm, -half),
                new Point(row.XMm, half),
                LineStyle.Engrave
            );
            yield return Thick(row.TrebleMm, row.XMm, -half + LabelInsetMm, Align.Left);
            yield return Thick(row.BassMm, row.XMm, half - LabelInsetMm, Align.Right);
        }

        yield return new LinearDimension(
            new Point(0, -half),
            new Point(taper.JoinMm, -half),
            Drawing.Side.Left,
            9
        );
        yield return new LinearDimension(
            new Point(taper.JoinMm, -half),
            new Point(taper.JoinMm, half),
            Drawing.Side.Below,
            9
        );
        yield return Along("station.nut", 0, half);
        yield return Along("station.join", taper.JoinMm, half);
        yield return new BassTreble(ViewFrame.Workboard, taper.JoinMm * -0.04, half * 0.5);
    }

    private static Label Thick(double mm, double x, double y, Align align) =>
        new(Figures.Fixed(mm, 2), new Point(x, y))
        {
            Align = align,
            Rise = Rise.Top,
            ShiftMm = new(0, -1.2),
            Style = TextStyle.SmallFigure,
        };

    private static Label Along(string key, double x, double half) =>
        new(SheetsWords.Of[key], new Point(x, half)) { Rise = Rise.Middle, ShiftMm = new(2.5, 0) };

    // From the bass edge, nut on the left; both edges where they differ.
    private static IEnumerable<Item> Side(Taper taper)
    {
        foreach (double thick in new[] { taper.NutBassMm, taper.NutTrebleMm }.Distinct())
        {
            if (thick > 0)
            {
                bool most = thick == taper.MostMm;
                Shape wedge = Shape.Polyline(
                    [new Point(0, 0), new Point(0, thick), new Point(taper.JoinMm, 0)],
                    closed: true
                );
                yield return new Region(wedge)
                {
                    Fill = most ? Tone.Wood : null,
                    Edge = most ? LineStyle.Outline : LineStyle.Hidden,
                };
            }
        }

        yield return new LinearDimension(
            new Point(0, 0),
            new Point(0, taper.MostMm),
            Drawing.Side.Left,
            5
        )
        {
            Decimals = 2,
        };
    }

    private static double HeightsFor(double mostMm)
    {
        double wanted = ThickOnSheetMm / (SideScale * mostMm);
        double[] steps = [10, 20, 50, 100, 200, 500];
        return steps.LastOrDefault(step => step <= wanted, steps[0]);
    }

    private static Table Thickness(Taper taper, string kind) =>
        new(
            SheetsWords.Of[$"{kind}.table"],
            [
                new Column(SheetsWords.Of["column.place"]),
                new Column(SheetsWords.Of["column.from-nut"], Align.Right, 26),
                new Column(SheetsWords.Of["side.bass"], Align.Right, 24) { Strong = true },
                new Column(SheetsWords.Of["side.treble"], Align.Right, 24) { Strong = true },
            ],
            [
                .. taper.Rows.Select(row =>
                    (IReadOnlyList<string>)
                        [
                            row.PlaceName,
                            Figures.Fixed(row.XMm, 1),
                            Figures.Fixed(row.BassMm, 2),
                            Figures.Fixed(row.TrebleMm, 2),
                        ]
                ),
                [SheetsWords.Of["station.join"], Figures.Fixed(taper.JoinMm, 1), "0", "0"],
            ]
        )
        {
            WidthMm = ColumnMm,
        };

    private static IEnumerable<string> Found(BoardCheck check)
    {
        foreach (Finding finding in check.Findings.Where(f => f.Severity > Severity.Note))
        {
            yield return finding.Message;
        }

        if (check.Left is { } left)
        {
            yield return SheetsWords.Of.Format(
                "shim.left",
                left.PlannedSaddleBassMm,
                left.PlannedSaddleTrebleMm,
                left.ActionBassMm,
                left.ActionTrebleMm,
                left.PlannedActionBassMm,
                left.PlannedActionTrebleMm,
                left.SaddleBassMm,
                left.SaddleTrebleMm
            );
        }
    }

    private static IEnumerable<string> How(BoardCheck check, string kind)
    {
        yield return SheetsWords.Of[$"{kind}.how-1"];
        yield return SheetsWords.Of[$"{kind}.how-2"];
        if (kind == "plane" && check.BodyWedgeMm is { } wedge)
        {
            yield return SheetsWords.Of.Format("plane.wedge", wedge);
        }

        yield return SheetsWords.Of["shim.check"];
    }
}

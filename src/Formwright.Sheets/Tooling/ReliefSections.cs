using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>Depths of the relief across the board at a few stations.</summary>
internal static class ReliefSections
{
    private static readonly double[] AcrossMm = [0, 30, 60, 90, 120, 150];

    /// <summary>Depths at every 50 mm along and 30 mm across; the relief is symmetric, so one side is enough.</summary>
    public static Table Table(Guitar guitar, WorkboardPlan plan, double widthMm)
    {
        double start = Math.Ceiling((guitar.JoinMm + guitar.Dome.StartUMm) / 50) * 50;
        List<IReadOnlyList<string>> rows = [];
        for (double x = start; x < guitar.TailMm; x += 50)
        {
            double u = x - guitar.JoinMm;
            rows.Add([
                Figures.Mm(x, 0),
                .. AcrossMm.Select(y =>
                {
                    double depth = plan.Relief.Shape.HeightAt(new Point(u, y));
                    return depth > 0 ? Figures.Fixed(depth, 2) : "–";
                }),
            ]);
        }

        return new Table(
            SheetsWords.Of["workboard.depths"],
            [
                new Column(SheetsWords.Of["column.from-nut"], Align.Right),
                .. AcrossMm.Select(y => new Column(
                    y == 0 ? SheetsWords.Of["column.centre"] : $"± {Figures.Mm(y, 0)}",
                    Align.Right,
                    28
                )),
            ],
            rows
        )
        {
            WidthMm = widthMm,
        };
    }
}

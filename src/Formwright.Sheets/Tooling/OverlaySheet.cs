using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Fields;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>An overlay and the packing under the neck at full size, as they lie on the board, face up.</summary>
internal static class OverlaySheet
{
    public static NamedSheet Of(Guitar guitar, WorkboardPlan plan)
    {
        Part[] flat = [.. plan.Parts.Where(part => part.Id is "overlay" or "packing")];
        return ReliefFrame.Of(
            "overlay",
            guitar,
            plan,
            [.. flat.SelectMany(Items), .. Marks(guitar), .. Room(guitar, plan)],
            PartTable(plan),
            [
                SheetsWords.Of["overlay.how-1"],
                SheetsWords.Of.Format("overlay.how-2", plan.RampMm, guitar.JoinMm),
                .. plan.Relief.Method == ReliefMethod.CorkOverlay
                    ? [SheetsWords.Of["overlay.how-2-cork"]]
                    : Array.Empty<string>(),
                SheetsWords.Of["overlay.how-3"],
                SheetsWords.Of.Format("overlay.how-4", plan.Relief.ClearanceMm),
                .. plan.BraceEnds.All(end => end.IsHeld)
                    ? Array.Empty<string>()
                    : [SheetsWords.Of["overlay.how-5"]],
            ]
        );
    }

    private static IEnumerable<Item> Items(Part part) => PartItems.Of(part, withWords: false);

    private static IEnumerable<Item> Marks(Guitar guitar)
    {
        double join = guitar.JoinMm;
        double half = guitar.Design.Workboard.NeckWidthMm / 2;
        double bout = guitar.Design.Outline.LowerBout.WidthMm / 2;
        yield return new Line(
            Shape.Of(guitar.Outline.Closed.Moved(new Vector(join, 0)).ToBeziers(0.01)),
            LineStyle.Hidden
        );
        foreach (HarmonicBarDesign bar in guitar.Design.HarmonicBars)
        {
            double inside = (guitar.Outline.WidthAt(bar.AtMm) / 2) - guitar.Design.Ribs.ThicknessMm;
            double w = bar.WidthMm / 2;
            yield return new Line(
                Shape.Rectangle(Box.Of(join + bar.AtMm - w, -inside, join + bar.AtMm + w, inside)),
                LineStyle.Hidden
            );
        }

        yield return new BassTreble(
            ViewFrame.Workboard,
            join + (guitar.Design.Outline.UpperBout.AtMm * 0.5),
            bout * 0.4
        )
        {
            Style = TextStyle.Body.Larger,
        };
        double edge = bout + guitar.Design.Workboard.MarginMm;
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                new Station(
                    new Point(-guitar.Design.Workboard.BeyondNutMm, -half),
                    SheetsWords.Of["station.board-end"]
                ),
                new Station(new Point(0, -half), SheetsWords.Of["station.nut"]),
                new Station(new Point(join, -half), SheetsWords.Of["station.join"]),
                .. guitar.Design.HarmonicBars.Select(bar => new Station(
                    new Point(join + bar.AtMm, -half),
                    SheetsWords.Of["station.bar"]
                )),
                new Station(
                    new Point(join + guitar.Dome.StartUMm, -half),
                    SheetsWords.Of["station.belly"]
                ),
                new Station(new Point(guitar.TailMm, 0), SheetsWords.Of["station.tail"]),
            ],
            Side.Left,
            14
        )
        {
            BeyondMm = edge - half,
        }.Larger;
    }

    // What is left under the dome: contours, its least at the top, and the brace ends that would press on the hollow.
    private static IEnumerable<Item> Room(Guitar guitar, WorkboardPlan plan)
    {
        double join = guitar.JoinMm;
        double step = guitar.Design.Workboard.ContourStepMm;
        Relief relief = plan.Relief;
        double dome = relief.Dome.Peak.HeightMm;
        int least = (int)Math.Floor(relief.ClearanceMm / step) + 1;
        int most = Math.Min(least + 200, (int)Math.Ceiling(relief.DeepestMm / step) - 1);
        double[] levels =
        [
            .. Enumerable
                .Range(least, Math.Max(0, most - least + 1))
                .Select(i => relief.DeepestMm - (i * step))
                .Where(height => height > 0 && height < dome)
                .Order(),
        ];
        foreach (Contour contour in Fields.Contours.Of(relief.Dome, levels, 0.02))
        {
            foreach (
                Item item in ReliefFrame.Contour(contour, join, relief.DeepestMm - contour.HeightMm)
            )
            {
                yield return item;
            }
        }

        if (dome > 0)
        {
            Point top = new(relief.Deepest.X + join, -relief.Deepest.Y);
            foreach (Item item in ReliefFrame.Deepest(top, relief.ClearanceMm))
            {
                yield return item;
            }
        }

        foreach (BraceEndGap end in plan.BraceEnds.Where(end => !end.IsHeld))
        {
            Point at = new(end.XMm, end.YBMm);
            yield return new Cross(at, 2);
            yield return new Label($"{end.Brace} {Figures.Fixed(end.GapMm, 1)}", at)
            {
                ShiftMm = new(1.5, 1.5),
                Style = TextStyle.SmallFigure,
                Clear = true,
            };
        }
    }

    private static Table PartTable(WorkboardPlan plan) =>
        new(
            SheetsWords.Of["overlay.parts"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.of"]),
                new Column(SheetsWords.Of["column.mm"], Align.Right, 14),
            ],
            [
                .. plan.Parts.Select(part =>
                    (IReadOnlyList<string>)
                        [part.Name, JigsWords.Of[part.Material], Figures.Mm(part.ThicknessMm)]
                ),
            ]
        )
        {
            WidthMm = ReliefFrame.ColumnMm,
            Style = TextStyle.Body.Larger,
        };
}

using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Fields;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Workboard;

namespace Formwright.Sheets.Tooling;

/// <summary>The workboard at full size, face up: edge, relief contours, holes for the mould, cross sections, how to carve it.</summary>
internal static class WorkboardSheet
{
    // Narrow enough for three columns side by side below the board, on a roll of 610 mm.
    private const double GapsMm = 148;
    private const double ColumnMm = 180;

    public static NamedSheet Of(Guitar guitar, WorkboardPlan plan)
    {
        View view = new([.. Items(guitar, plan)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
        };
        bool carved = plan.Relief.Method == ReliefMethod.Carved;
        Block[] blocks =
        [
            GapSheet.Table(plan, GapsMm, style: TextStyle.Body.Larger),
            .. carved ? [ReliefSections.Depths(plan, ColumnMm)] : Array.Empty<Block>(),
            new Notes(
                SheetsWords.Of[carved ? "workboard.how" : "workboard.how-overlay"],
                [.. carved ? Carving(guitar, plan) : Overlaying(guitar, plan)],
                ColumnMm
            )
            {
                Numbered = true,
                Style = TextStyle.Body.Larger,
            },
            Care.AtTheMachine(ColumnMm, TextStyle.Body.Larger),
            .. ReliefSections.Cuts(guitar, plan),
        ];
        return new NamedSheet(
            "workboard",
            Composing.WithColumn(Titles.Of(guitar, "sheet.workboard"), view, blocks),
            IsTiled: true
        );
    }

    private static IEnumerable<string> Carving(Guitar guitar, WorkboardPlan plan)
    {
        yield return SheetsWords.Of.Format("workboard.how-1", plan.RampMm, guitar.JoinMm);
        yield return SheetsWords.Of.Format(
            "workboard.how-2",
            plan.Relief.DeepestMm,
            guitar.Design.Workboard.ContourStepMm
        );
        yield return SheetsWords.Of["workboard.how-3"];
        yield return SheetsWords.Of["workboard.how-4"];
    }

    private static IEnumerable<string> Overlaying(Guitar guitar, WorkboardPlan plan)
    {
        double thick = guitar.Design.Workboard.OverlayThicknessMm;
        yield return SheetsWords.Of.Format("workboard.how-1-overlay", thick);
        yield return SheetsWords.Of.Format("workboard.how-2-overlay", plan.RampMm, guitar.JoinMm);
        yield return SheetsWords.Of["workboard.how-3-overlay"];
        yield return SheetsWords.Of["workboard.how-4"];
        yield return SheetsWords.Of["workboard.how-5-overlay"];
    }

    private static IEnumerable<Item> Items(Guitar guitar, WorkboardPlan plan)
    {
        double join = guitar.JoinMm;
        WorkboardDesign board = guitar.Design.Workboard;
        foreach (Item item in PartItems.Of(WithoutSpots(plan.Board), withWords: false))
        {
            yield return item;
        }

        foreach (Item contour in DepthLines(plan, join, board.ContourStepMm))
        {
            yield return contour;
        }

        foreach (Item outline in Body(guitar, join))
        {
            yield return outline;
        }

        double half = board.NeckWidthMm / 2;
        double bout = guitar.Design.Outline.LowerBout.WidthMm / 2;
        double edge = bout + board.MarginMm;
        yield return new OrdinateDimensions(
            new Point(0, 0),
            [
                new Station(
                    new Point(-board.BeyondNutMm, -half),
                    SheetsWords.Of["station.board-end"]
                ),
                new Station(new Point(0, -half), SheetsWords.Of["station.nut"]),
                new Station(new Point(join, -half), SheetsWords.Of["station.join"]),
                .. guitar.Design.HarmonicBars.Select(bar => new Station(
                    new Point(join + bar.AtMm, -half),
                    SheetsWords.Of["station.bar"]
                )),
                new Station(
                    new Point(join + plan.Relief.Deepest.X, plan.Relief.Deepest.Y),
                    SheetsWords.Of["station.deepest"]
                ),
                new Station(new Point(guitar.TailMm, 0), SheetsWords.Of["station.tail"]),
                new Station(
                    new Point(guitar.TailMm + board.MarginMm, 0),
                    SheetsWords.Of["station.board-end"]
                ),
            ],
            Side.Left,
            14
        )
        {
            BeyondMm = edge - half,
        }.Larger;
        double widest = join + guitar.Design.Outline.LowerBout.AtMm;
        double end = guitar.TailMm + board.MarginMm;
        foreach (double side in new[] { -edge, edge })
        {
            yield return new Line(new Point(widest, side), new Point(end, side), LineStyle.Witness);
        }

        // Below the board, where no contour has its figure.
        yield return new LinearDimension(
            new Point(end, -edge),
            new Point(end, edge),
            Side.Below,
            8
        );
        yield return new LinearDimension(
            new Point(-board.BeyondNutMm, -half),
            new Point(-board.BeyondNutMm, half),
            Side.Above,
            8
        );
        yield return new BassTreble(
            ViewFrame.Workboard,
            join + (guitar.Design.Outline.UpperBout.AtMm * 0.5),
            bout * 0.4
        )
        {
            Style = TextStyle.Body.Larger,
        };
        yield return new Label(
            SheetsWords.Of.Format("workboard.ramp", plan.RampMm),
            new Point(join / 2, half / 2)
        )
        {
            Align = Align.Centre,
            Rise = Rise.Middle,
            Degrees = 90,
            Style = TextStyle.Body.Larger,
        };
    }

    // They have a sheet of their own.
    private static Part WithoutSpots(Part board) =>
        board with
        {
            Holes = [.. board.Holes.Where(hole => hole.Kind != HoleKind.Spot)],
        };

    private static IEnumerable<Item> DepthLines(WorkboardPlan plan, double join, double step)
    {
        if (plan.Relief.Method != ReliefMethod.Carved)
        {
            foreach (IReadOnlyList<Point> loop in plan.Relief.Shape.Region.Loops)
            {
                Point[] edge = [.. loop.Select(p => new Point(p.X + join, -p.Y))];
                yield return new Line(Shape.Polyline(edge, closed: true), LineStyle.Pocket);
            }

            yield break;
        }

        int count = Math.Min(200, (int)Math.Ceiling(plan.Relief.DeepestMm / step) - 1);
        double[] levels = [.. Enumerable.Range(1, Math.Max(0, count)).Select(i => i * step)];
        foreach (Contour contour in Fields.Contours.Of(plan.Relief.Shape, levels, 0.02))
        {
            foreach (Item item in ReliefFrame.Contour(contour, join, contour.HeightMm))
            {
                yield return item;
            }
        }

        Point deepest = new(plan.Relief.Deepest.X + join, -plan.Relief.Deepest.Y);
        foreach (Item item in ReliefFrame.Deepest(deepest, plan.Relief.DeepestMm))
        {
            yield return item;
        }
    }

    private static IEnumerable<Item> Body(Guitar guitar, double join)
    {
        Curves.Outline outline = guitar.Outline;
        // The outline is symmetric, so seen from the other side it is the same curve.
        Shape edge = Shape.Of(outline.Closed.Moved(new Vector(join, 0)).ToBeziers(0.01));
        yield return new Line(edge, LineStyle.Hidden);
        SoundholeDesign hole = guitar.Design.Soundhole;
        yield return new Line(
            Shape.Circle(new Point(join + hole.AtMm, 0), hole.RadiusMm),
            LineStyle.Hidden
        );
        foreach (HarmonicBarDesign bar in guitar.Design.HarmonicBars)
        {
            double half = (outline.WidthAt(bar.AtMm) / 2) - guitar.Design.Ribs.ThicknessMm;
            double w = bar.WidthMm / 2;
            Box box = Box.Of(join + bar.AtMm - w, -half, join + bar.AtMm + w, half);
            yield return new Line(Shape.Rectangle(box), LineStyle.Hidden);
        }
    }
}

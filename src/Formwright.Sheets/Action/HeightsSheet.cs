using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;

namespace Formwright.Sheets.Action;

/// <summary>The heights from nut to saddle, on the board and strung, with the table that goes to the bench.</summary>
internal static class HeightsSheet
{
    private const double Scale = 0.2;
    private const double Heights = 10;

    // A height that no line of the drawing would show.
    private const double LeastShownMm = 0.05;

    public static NamedSheet Of(Guitar guitar, NeckAndAction action)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.heights", "document.check"), Paper.A4);
        Box area = sheet.Area;
        View board = ViewOf(guitar, action, action.OnBoard, "heights.on-board")
            .TopLeftAt(new Point(area.LeftMm, area.TopMm));
        View strung = ViewOf(guitar, action, action.Strung, "heights.strung")
            .TopLeftAt(new Point(area.LeftMm, board.Bounds().BottomMm - 4));
        double below = strung.Bounds().BottomMm - 5;
        return new NamedSheet(
            "heights",
            sheet
                .Add(board, strung)
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm, below),
                        5,
                        Table(action, area.WidthMm),
                        Care.UnderTension(area.WidthMm)
                    )
                ),
            IsTiled: false
        );
    }

    private static View ViewOf(
        Guitar guitar,
        NeckAndAction action,
        HeightChain chain,
        string label
    ) =>
        new(
            [
                .. ChainView.Of(guitar, action, chain),
                .. ChainView.Places(guitar, action),
                .. Dimensions(action, chain),
            ],
            ViewFrame.SideView
        )
        {
            Scale = Scale,
            Heights = Heights,
            Label = SheetsWords.Of[label],
        };

    private static IEnumerable<Item> Dimensions(NeckAndAction action, HeightChain chain)
    {
        ChainGeometry geometry = action.Model.Geometry;
        if (Math.Abs(chain.NeckMm) > LeastShownMm)
        {
            yield return Height(0, chain.NeckMm, 4);
        }

        double x12 = geometry.ActionFretMm;
        int last = geometry.Count - 1;
        yield return Action(action, chain, chain.Bass, 0, x12, "heights.bass", 1);
        yield return Action(action, chain, chain.Treble, last, x12 + 20, "heights.treble", 1);
        double saddle = geometry.SaddleMm.Average();
        yield return new LinearDimension(
            new Point(saddle, chain.Bass.DomeMm),
            new Point(saddle, chain.Bass.SaddleTopMm),
            Side.Right,
            9
        )
        {
            Decimals = 1,
            After = SheetsWords.Of["heights.bass"],
            Style = TextStyle.SmallFigure,
        };
        if (Math.Abs(chain.DomeMm) > LeastShownMm)
        {
            yield return Height(saddle - 30, chain.DomeMm, 0);
        }
    }

    private static LinearDimension Height(double x, double z, double offsetMm) =>
        new(new Point(x, 0), new Point(x, z), Side.Left, offsetMm)
        {
            Decimals = 2,
            Style = TextStyle.SmallFigure,
            Share = 1,
        };

    private static LinearDimension Action(
        NeckAndAction action,
        HeightChain chain,
        StringHeights heights,
        int index,
        double x,
        string name,
        double share
    )
    {
        double z12 = heights.FretMm[ChainGeometry.ActionFret];
        double top = z12 + heights.Action12Mm;
        return new(new Point(x, z12), new Point(x, top), Side.Right, 0)
        {
            Text = $"{Figures.Fixed(heights.Action12Mm, 1)} {SheetsWords.Of[name]}",
            Style = TextStyle.SmallFigure,
            Share = share,
        };
    }

    private static Table Table(NeckAndAction action, double widthMm)
    {
        HeightChain b = action.OnBoard;
        HeightChain f = action.Free;
        HeightChain s = action.Strung;
        ChainFigures figures = action.Model.Figures;
        string Mm(double value) => Figures.Fixed(value, 2);
        IReadOnlyList<string> Row(string key, double onBoard, double free, double strung) =>
            [SheetsWords.Of[key], Mm(onBoard), Mm(free), Mm(strung), ""];
        IReadOnlyList<string> Same(string key, double value) =>
            [SheetsWords.Of[key], Mm(value), "", "", ""];
        return new Table(
            SheetsWords.Of["heights.table"],
            [
                new Column(SheetsWords.Of["column.mm"]),
                new Column(SheetsWords.Of["column.on-board"], Align.Right, 21),
                new Column(SheetsWords.Of["column.free"], Align.Right, 21),
                new Column(SheetsWords.Of["column.strung"], Align.Right, 21) { Strong = true },
                new Column(SheetsWords.Of["column.found"], Align.Right, 21),
            ],
            [
                Row("heights.neck", b.NeckMm, f.NeckMm, s.NeckMm),
                Row("heights.dome", b.DomeMm, f.DomeMm, s.DomeMm),
                Same("heights.board-nut", figures.FingerboardNutMm),
                Same("heights.board-join", figures.FingerboardJoinMm),
                Same("heights.fret", figures.FretHeightMm),
                Row("heights.nut-bass", b.Bass.ActionMm[0], f.Bass.ActionMm[0], s.Bass.ActionMm[0]),
                Row("heights.projection", b.ProjectionMm, f.ProjectionMm, s.ProjectionMm),
                Row("heights.bow", b.BowMm, f.BowMm, s.BowMm),
                Row("heights.action-bass", b.Bass.Action12Mm, f.Bass.Action12Mm, s.Bass.Action12Mm),
                Row(
                    "heights.action-treble",
                    b.Treble.Action12Mm,
                    f.Treble.Action12Mm,
                    s.Treble.Action12Mm
                ),
                Row("heights.saddle-bass", b.Bass.SaddleMm, f.Bass.SaddleMm, s.Bass.SaddleMm),
                Row(
                    "heights.saddle-treble",
                    b.Treble.SaddleMm,
                    f.Treble.SaddleMm,
                    s.Treble.SaddleMm
                ),
            ]
        )
        {
            WidthMm = widthMm,
        };
    }
}

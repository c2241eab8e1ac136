using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Ribs;

namespace Formwright.Sheets.Body;

/// <summary>The rib laid flat at full size, with its stations and bends, its blank, and its heights as a table.</summary>
internal static class RibSheet
{
    private const double TableStepMm = 20;

    public static NamedSheet Of(Guitar guitar, BodyPlan body)
    {
        View treble = new([.. Items(guitar, body.Ribs, mirror: true)])
        {
            Label = SheetsWords.Of["ribs.view-treble"],
        };
        View bass = new([.. Items(guitar, body.Ribs, mirror: false)])
        {
            Label = SheetsWords.Of["ribs.view-bass"],
        };
        Sheet sheet = Layout.Of(
            Titles.Of(guitar, "sheet.ribs"),
            [treble, bass],
            [
                .. Layout.Split(Heights(body.Ribs), 4, 112),
                Blank(guitar, body.Ribs),
                How(guitar, body.Ribs),
            ]
        );
        return new NamedSheet("ribs", sheet, IsTiled: true);
    }

    // Seen on its outer face, soundboard down, the bass rib has its tail at the left and the treble rib at the right: the same pattern run
    // the other way, not a mirrored view, so that its words stay readable.
    private static IEnumerable<Item> Items(Guitar guitar, RibPlan ribs, bool mirror)
    {
        Point On(double along, double up) => new(mirror ? ribs.LengthMm - along : along, up);
        double allow = guitar.Design.Ribs.LengthAllowanceMm;
        double low = ribs.Points.Min(at => at.FrontMm);
        yield return new Line(
            Shape.Rectangle(
                Box.Of(-allow, low, ribs.BlankLengthMm - allow, low + ribs.BlankWidthMm)
            ),
            LineStyle.Hidden
        );
        yield return new Region(
            Shape.Polyline([.. ribs.Pattern.Select(at => On(at.X, at.Y))], closed: true)
        )
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        foreach (RibStation station in ribs.Stations)
        {
            RibPoint at = station.At;
            bool isEnd = station.Mark is RibMark.Tail or RibMark.Heel;
            Point front = On(at.AlongMm, at.FrontMm);
            Point back = On(at.AlongMm, at.BackMm);
            if (!isEnd)
            {
                yield return new Line(
                    front,
                    back,
                    station.Mark == RibMark.Straight ? LineStyle.Hidden : LineStyle.Detail
                );
            }

            yield return new Label(Figures.Fixed(at.HeightMm, 1), front.Towards(back, 0.5))
            {
                Degrees = 90,
                Align = Align.Centre,
                Rise = Rise.Middle,
                Style = TextStyle.Figure,
                ShiftMm = new((station.Mark == RibMark.Tail) != mirror ? 4 : -4, 0),
            };
        }

        foreach (RibBend bend in ribs.Bends)
        {
            double y = bend.IsWaist ? 16 : 10;
            Point from = On(bend.FromMm, y);
            Point to = On(bend.ToMm, y);
            yield return new Line(from, to, LineStyle.Dimension);
            yield return new Line(
                from - new Vector(0, 3),
                from + new Vector(0, 3),
                LineStyle.Dimension
            );
            yield return new Line(
                to - new Vector(0, 3),
                to + new Vector(0, 3),
                LineStyle.Dimension
            );
            double share = bend.IsWaist ? 0.26 : 0.3;
            yield return new Label(
                SheetsWords.Of.Format(
                    bend.IsWaist ? "ribs.bend-waist" : "ribs.bend-out",
                    bend.TightestMm
                ),
                from.Towards(to, share)
            )
            {
                Align = Align.Centre,
                Rise = Rise.Middle,
                Clear = true,
            };
            yield return new Cross(On(bend.TightestAtMm, y), 2);
        }

        yield return new OrdinateDimensions(
            On(0, 0),
            [
                .. ribs.Stations.Select(station => new Station(
                    On(station.At.AlongMm, Math.Min(station.At.FrontMm, low)),
                    SheetsWords.Of[$"rib-mark.{Choices.NameOf(station.Mark)}"]
                )),
            ],
            Side.Below,
            10
        ).Larger;
    }

    private static Table Heights(RibPlan ribs)
    {
        bool front = !ribs.IsFrontStraight;
        List<Column> columns =
        [
            new(SheetsWords.Of["column.from-tail"], Align.Right, 26),
            new(SheetsWords.Of["column.height"], Align.Right, 22) { Strong = true },
            new(SheetsWords.Of["column.bevel"], Align.Right, 24),
        ];
        if (front)
        {
            columns.Add(new(SheetsWords.Of["column.front"], Align.Right, 24));
        }

        List<IReadOnlyList<string>> rows = [];
        for (double s = 0; s < ribs.LengthMm; s += TableStepMm)
        {
            rows.Add(RowOf(At(ribs, s), front));
        }

        rows.Add(RowOf(ribs.Points[^1], front));
        return new Table(SheetsWords.Of["ribs.heights"], columns, rows)
        {
            Style = TextStyle.Body.Larger,
        };
    }

    private static IReadOnlyList<string> RowOf(RibPoint at, bool front) =>
        front
            ?
            [
                Figures.Fixed(at.AlongMm, 1),
                Figures.Fixed(at.HeightMm, 1),
                Figures.Fixed(at.BackBevelDeg, 1),
                Figures.Fixed(-at.FrontMm, 1),
            ]
            :
            [
                Figures.Fixed(at.AlongMm, 1),
                Figures.Fixed(at.HeightMm, 1),
                Figures.Fixed(at.BackBevelDeg, 1),
            ];

    // Linear between places that are at most 3 mm apart.
    private static RibPoint At(RibPlan ribs, double along)
    {
        int next = 1;
        while (next < ribs.Points.Count - 1 && ribs.Points[next].AlongMm < along)
        {
            next++;
        }

        RibPoint a = ribs.Points[next - 1];
        RibPoint b = ribs.Points[next];
        double share = (along - a.AlongMm) / (b.AlongMm - a.AlongMm);
        double Mix(double x, double y) => x + (share * (y - x));
        return a with
        {
            AlongMm = along,
            FrontMm = Mix(a.FrontMm, b.FrontMm),
            BackMm = Mix(a.BackMm, b.BackMm),
            BackBevelDeg = Mix(a.BackBevelDeg, b.BackBevelDeg),
        };
    }

    private static Table Blank(Guitar guitar, RibPlan ribs)
    {
        LiningPlan lining = ribs.Lining;
        bool kerfed = guitar.Design.Ribs.Lining != Design.Sections.LiningKind.Solid;
        List<IReadOnlyList<string>> rows =
        [
            Row("ribs.blank-length", Figures.Fixed(ribs.BlankLengthMm, 0)),
            Row("ribs.blank-width", Figures.Fixed(ribs.BlankWidthMm, 1)),
            Row("ribs.thickness", Figures.Fixed(guitar.Design.Ribs.ThicknessMm, 2)),
            Row("ribs.lining-front", Figures.Fixed(lining.FrontMm, 0)),
            Row("ribs.lining-back", Figures.Fixed(lining.BackMm, 0)),
        ];
        if (lining.GlueBlocks > 0)
        {
            string text = SheetsWords.Of.Format(
                "ribs.glue-blocks",
                Figures.Mm(guitar.Design.Ribs.GlueBlockMm)
            );
            rows.Add([text, $"{lining.GlueBlocks}"]);
            rows.Add(Row("ribs.glue-block-round", Figures.Fixed(lining.GlueBlockRoundMm, 2)));
        }

        if (kerfed && double.IsFinite(lining.KerfStepMm))
        {
            rows.Add(Row("ribs.kerf-step", Figures.Fixed(lining.KerfStepMm, 1)));
        }

        return new Table(
            SheetsWords.Of["ribs.blank"],
            [new Column(""), new Column(SheetsWords.Of["column.mm"], Align.Right, 24)],
            rows
        )
        {
            WidthMm = 150,
            Style = TextStyle.Body.Larger,
        };
    }

    private static string[] Row(string key, string value) => [SheetsWords.Of[key], value];

    private static Notes How(Guitar guitar, RibPlan ribs) =>
        new(
            "",
            [
                SheetsWords.Of["ribs.note-side"],
                SheetsWords.Of["ribs.note-bevel"],
                SheetsWords.Of.Format(
                    ribs.HeelBlock is null ? "ribs.note-slot" : "ribs.note-butt",
                    guitar.Design.Heel.SlotDepthMm
                ),
            ],
            150
        )
        {
            Style = TextStyle.Body.Larger,
        };
}

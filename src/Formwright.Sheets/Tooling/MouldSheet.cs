using Formwright.Curves;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Mould;
using Formwright.Jigs.Parts;

namespace Formwright.Sheets.Tooling;

/// <summary>The bass half of the mould at full size (the treble half is its mirror), both halves small, a section of the wall, the drill table.</summary>
internal static class MouldSheet
{
    private const double ColumnMm = 226;
    private const double GapMm = 12;

    public static NamedSheet Of(Guitar guitar, MouldPlan plan)
    {
        View half = new([.. HalfItems(guitar, plan)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Label = SheetsWords.Of["mould.view-half"],
        };
        Box box = half.Bounds();
        Paper paper = Paper.Holding(
            new Size(box.WidthMm + 14 + ColumnMm, Math.Max(box.HeightMm, 590))
        );
        Sheet sheet = new(Titles.Of(guitar, "sheet.mould"), paper);
        Box area = sheet.Area;
        double left = area.RightMm - ColumnMm;
        View both = new View([.. OverviewItems(guitar, plan)], ViewFrame.Workboard)
        {
            RotationRad = View.NeckUp,
            Scale = 0.2,
            Label = SheetsWords.Of["mould.view"],
        }.TopLeftAt(new Point(left, area.TopMm));
        Box overview = both.Bounds();
        View section = WallSection
            .Of(guitar, plan)
            .TopLeftAt(new Point(overview.RightMm + 16, area.TopMm));
        double below = Math.Min(overview.BottomMm, section.Bounds().BottomMm) - GapMm;
        Box room = Box.Of(area.LeftMm, area.BottomMm, left - 14, area.TopMm);
        return new NamedSheet(
            "mould",
            sheet
                .Add(half.CentredIn(room), both, section)
                .Add(
                    Flow.Down(
                        new Point(left, below),
                        GapMm,
                        DrillTable(plan),
                        Layers(plan),
                        Faces(),
                        How(guitar, plan),
                        Care()
                    )
                ),
            IsTiled: true
        );
    }

    private static Notes How(Guitar guitar, MouldPlan plan) =>
        new(
            SheetsWords.Of["mould.how"],
            [
                SheetsWords.Of.Format("mould.how-cut", guitar.Design.Mould.RoughMm),
                plan.Cutting?.RebateBearingMm is { } bearing
                    ? SheetsWords.Of.Format(
                        "mould.how-bearing",
                        guitar.Design.Mould.CutterDiameterMm,
                        bearing
                    )
                    : SheetsWords.Of["mould.how-no-bearing"],
                SheetsWords.Of.Format(
                    "mould.how-1",
                    guitar.Design.Mould.Rebate.WidthMm,
                    guitar.Design.Mould.Rebate.DepthMm,
                    guitar.Design.Soundboard.EdgeThicknessMm
                ),
                SheetsWords.Of["mould.how-2"],
                SheetsWords.Of["mould.how-3"],
            ],
            ColumnMm
        )
        {
            Numbered = true,
            Style = TextStyle.Body.Larger,
        };

    private static Table Faces() =>
        new(
            SheetsWords.Of["mould.faces"],
            [new Column(""), new Column("", Align.Right, 60)],
            [
                .. GlueFace.All.Select(face =>
                    (IReadOnlyList<string>)
                        [face.Name, SheetsWords.Of[face.IsGlued ? "mould.glue" : "mould.no-glue"]]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static Cautions Care() =>
        new([SheetsWords.Of["caution.router"], SheetsWords.Of["caution.dust"]], ColumnMm)
        {
            Style = TextStyle.Body.Larger,
        };

    private static IEnumerable<Item> HalfItems(Guitar guitar, MouldPlan plan)
    {
        double tail = guitar.TailMm;
        yield return new Line(
            new Point(guitar.JoinMm - 60, 0),
            new Point(tail + 60, 0),
            LineStyle.Centreline
        );
        foreach (Item item in PartItems.Of(Bottom(plan, "bass")))
        {
            yield return item;
        }

        for (int i = 0; i < plan.Fasteners.Count; i++)
        {
            Fastener fastener = plan.Fasteners[i];
            if (fastener.Centre.Y > 0)
            {
                yield return new Balloon($"{i + 1}", fastener.Centre, new Vector(9, 7));
            }
        }

        double cut = guitar.Design.Mould.HeelCutMm;
        Point heel = new(guitar.JoinMm - 20, 0);
        // Their figures stand on the far side of the centreline, where no hole is.
        yield return new LinearDimension(heel, new Point(heel.X, cut), Side.Above, 0) { Share = 0 };
        Point end = new(tail + 20, 0);
        yield return new LinearDimension(
            end,
            new Point(end.X, guitar.Design.Mould.TailCutMm),
            Side.Below,
            0
        )
        {
            Share = 0,
        };
        double widest = guitar.JoinMm + guitar.Design.Outline.LowerBout.AtMm;
        double inner = guitar.Design.Outline.LowerBout.WidthMm / 2;
        Point face = new(widest, inner);
        yield return new LinearDimension(
            face,
            new Point(widest, inner + guitar.Design.Mould.WallMm),
            Side.Above,
            0
        );
        yield return new Label(SheetsWords.Of["side.bass"], new Point(widest, inner * 0.6))
        {
            Align = Align.Centre,
            Style = TextStyle.Body.Larger,
        };
    }

    private static IEnumerable<Item> OverviewItems(Guitar guitar, MouldPlan plan)
    {
        Point from = new(guitar.JoinMm - 60, 0);
        yield return new Line(from, new Point(guitar.TailMm + 60, 0), LineStyle.Centreline);
        foreach (Part part in new[] { Bottom(plan, "treble"), Bottom(plan, "bass") })
        {
            yield return new Region(Shape.Of(part.Outside))
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Detail,
            };
        }

        for (int i = 0; i < plan.Fasteners.Count; i++)
        {
            Point centre = plan.Fasteners[i].Centre;
            yield return new Dot(centre);
            yield return new Label($"{i + 1}", centre)
            {
                // Outwards: a dowel stands near the end that faces the centreline.
                Align = centre.Y > 0 ? Align.Left : Align.Right,
                Rise = Rise.Middle,
                ShiftMm = new(centre.Y > 0 ? 1.4 : -1.4, 0),
            };
        }

        double upper = guitar.JoinMm + guitar.Design.Outline.LowerBout.AtMm;
        yield return new BassTreble(
            ViewFrame.Workboard,
            upper,
            guitar.Design.Outline.LowerBout.WidthMm * 0.25
        );
    }

    private static Part Bottom(MouldPlan plan, string side) =>
        plan.Parts.First(part => part.Id.EndsWith(side, StringComparison.Ordinal));

    private static Table DrillTable(MouldPlan plan) =>
        new(
            SheetsWords.Of["mould.holes"],
            [
                new Column("", Align.Right, 10),
                new Column(SheetsWords.Of["column.for"]),
                new Column(SheetsWords.Of["column.from-nut"], Align.Right, 40),
                new Column(SheetsWords.Of["column.from-centreline"], Align.Right, 62),
                new Column("Ø", Align.Right, 16),
                new Column(SheetsWords.Of["column.edge"], Align.Right, 32),
            ],
            [
                .. plan.Fasteners.Select(
                    (fastener, i) =>
                        (IReadOnlyList<string>)
                            [
                                $"{i + 1}",
                                JigsWords.Of[$"hole.{fastener.Kind}"],
                                Figures.Fixed(fastener.Centre.X, 2),
                                $"{Figures.Fixed(Math.Abs(fastener.Centre.Y), 2)} {SheetsWords.Of[fastener.Centre.Y > 0 ? "side.bass" : "side.treble"]}",
                                Figures.Mm(fastener.DiameterMm, 2),
                                Figures.Fixed(fastener.EdgeDistanceMm, 1),
                            ]
                ),
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };

    private static Table Layers(MouldPlan plan) =>
        new(
            SheetsWords.Of["mould.stack"],
            [new Column(""), new Column(SheetsWords.Of["column.mm"], Align.Right, 44)],
            [
                .. plan.LayersMm.Select(
                    (layer, i) =>
                        (IReadOnlyList<string>)
                            [SheetsWords.Of.Format("mould.layer", i + 1), Figures.Mm(layer)]
                ),
                [SheetsWords.Of["mould.height"], Figures.Mm(plan.HeightMm)],
                [
                    SheetsWords.Of["mould.height-range"],
                    $"{Figures.Mm(plan.StackMm.LeastMm)}–{Figures.Mm(plan.StackMm.MostMm)}",
                ],
                [
                    SheetsWords.Of["mould.bolt-length"],
                    $"{Figures.Mm(plan.BoltLengthMm)}–{Figures.Mm(plan.Bolt?.MostMm ?? plan.BoltLengthMm)}",
                ],
                [
                    SheetsWords.Of["mould.bolt-trade"],
                    plan.Bolt?.LengthMm is { } length ? Figures.Mm(length) : "–",
                ],
                [SheetsWords.Of["mould.dowel-length"], Figures.Mm(plan.DowelLengthMm)],
                .. plan.Play is { } play
                    ? (IReadOnlyList<string>[])
                        [
                            [
                                SheetsWords.Of.Format("mould.far-end", play.ClearanceMm),
                                Figures.Fixed(play.FarEndMm, 2),
                            ],
                        ]
                    : [],
                .. plan.Cutting is { } cutting
                    ? (IReadOnlyList<string>[])
                        [
                            [
                                SheetsWords.Of.Format("mould.hollow", cutting.CutterRadiusMm),
                                Figures.Fixed(cutting.TightestHollowMm, 1),
                            ],
                        ]
                    : [],
            ]
        )
        {
            WidthMm = ColumnMm,
            Style = TextStyle.Body.Larger,
        };
}

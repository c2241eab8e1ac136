using System.Globalization;
using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Writers.Tests;

/// <summary>A small sheet that uses every kind of item once, and a cut part; both asymmetric, so that a mirror shows.</summary>
internal static class Sample
{
    public static TitleBlock Title { get; } =
        new("Head of the Plover", "FW-0001-02")
        {
            Owner = "Tern Lane workshop",
            Creator = "A. Núñez",
            Date = "2025-05-01",
            DocumentType = "workshop drawing",
            Revision = "A",
            SheetNumber = 2,
            SheetCount = 3,
        };

    /// <summary>A plate of lines, an arc and a cubic, wider on its +y side, with its area in closed form but for the cubic.</summary>
    public static Shape Plate { get; } =
        new(
            new(0, -20),
            [
                new LineSegment(new(100, -20)),
                new ArcSegment(new(100, 30), Math.Tan(Math.PI / 8)),
                new CubicSegment(new(70, 38), new(40, 22), new(10, 30)),
                new LineSegment(new(0, 20)),
            ],
            closed: true
        );

    public static DrawnSheet Sheet(Paper? paper = null)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        Sheet sheet = new(Title, paper ?? Paper.A3.Turned());
        Box area = sheet.Area;
        View front = new(Plan(), ViewFrame.Front) { RotationRad = View.NeckUp };
        View side = new(Profile(), ViewFrame.SideView) { Heights = 10 };
        return sheet
            .Add(front.TopLeftAt(area.TopLeft), side.TopLeftAt(new(area.LeftMm + 5, 110)))
            .Add(Blocks(new(area.RightMm - 170, area.TopMm)))
            .Draw();
    }

    private static Item[] Plan() =>
        [
            new Region(Plate) { Fill = Tone.Wood, Edge = LineStyle.Outline },
            new Line(new Point(-10, 0), new Point(125, 0), LineStyle.Centreline),
            new Line(new Point(5, -15), new Point(95, -15), LineStyle.Hidden),
            new Line(Shape.Arc(new(60, 0), 12, 1, 2), LineStyle.Contour),
            new Region(Shape.Circle(new(35, 0), 9)) { HatchDegrees = 45, Edge = LineStyle.Detail },
            new Hole(new(85, 15), 6.4),
            new BassTreble(ViewFrame.Front, 14, 9),
            new LinearDimension(new(0, -20), new(100, -20), Side.Left, 12) { Key = "length" },
            new LinearDimension(new(100, -20), new(100, 30), Side.Below, 24) { After = "± 0.2" },
            new LinearDimension(new(0, 20), new(10, 30), Side.Above, 7) { Share = 1 },
            new AlignedDimension(new(0, 20), new(10, 30), 16) { Style = TextStyle.SmallFigure },
            new OrdinateDimensions(
                new(0, 0),
                [
                    new(new(0, 20), "edge"),
                    new(new(35, 9), "hole"),
                    new(new(37, 9)),
                    new(new(85, 15), "peg"),
                    new(new(100, 30)),
                ],
                Side.Right,
                28
            ),
            new RadiusDimension(new(75, 5), 35.355, 0.5, 6) { Style = TextStyle.SmallFigure },
            new DiameterDimension(new(85, 15), 6.4, new(22, -8)) { After = "through" },
            new Leader(new(60, -8), new(-22, 4), "cedro, 2 ½") { End = LeaderEnd.Dot },
            new Balloon("1", new(20, -20), new(-9, 7)),
            new Dot(new(60, 0)),
        ];

    private static Item[] Profile() =>
        [
            new Line(new Point(-5, 0), new Point(105, 0), LineStyle.Datum),
            new Region(Shape.Polyline([new(0, 1.5), new(50, 0), new(100, 0), new(100, 2)], true))
            {
                Fill = Tone.Wood,
                Edge = LineStyle.Outline,
            },
            new LinearDimension(new(0, 0), new(0, 1.5), Side.Left, 8),
            new LinearDimension(new(0, 0), new(50, 0), Side.Below, 9),
        ];

    private static IReadOnlyList<Block> Blocks(Point corner) =>
        Flow.Down(
            corner,
            7,
            new Table(
                "Stations",
                [new("place"), new("at", Align.Right), new("width", Align.Right) { Strong = true }],
                [
                    ["Upper bout", "88", "238.0"],
                    ["Waist", "160", "200.5"],
                    ["Lower bout, on the treble side, as it came out", "300", "308.0"],
                ]
            )
            {
                WidthMm = 110,
            },
            new Notes(
                "Notes",
                [
                    "Measure both bars before you cut. The señorita's joint is glued last.",
                    "Sand where it stands proud.",
                ],
                110
            )
            {
                Numbered = true,
            },
            new Plot(
                "Ramp against dome",
                PlotAxis.Around("dome, mm", [0, 5]),
                PlotAxis.Around("ramp, mm", [0, 3]),
                [
                    new([new(0, 3), new(5, 0.5)], "saddle 11"),
                    new([new(0, 2), new(5, -0.5)], "saddle 9") { Style = LineStyle.Hair },
                ],
                new(150, 70)
            )
            {
                Zones = [Box.Of(2.2, 1.2, 2.7, 1.5)],
                Marked = [new(2.4, 1.4)],
            },
            new Cautions(["Wear a mask: the dust of hardwood harms."], 110)
        );

    /// <summary>The plate with its cubic as an arc, a pocket of two half circles, a slot, holes and a text.</summary>
    public static CutPart Part { get; } =
        new(
            "plover-head",
            [
                new CutContour(
                    CutOperation.OutsideCut,
                    new Shape(
                        new(0, -20),
                        [
                            new LineSegment(new(100, -20)),
                            new ArcSegment(new(100, 30), Math.Tan(Math.PI / 8)),
                            new LineSegment(new(0, 20)),
                            new LineSegment(new(0, -20)),
                        ],
                        closed: true
                    )
                ),
                new CutContour(CutOperation.InsideCut, Shape.Circle(new(35, 0), 9)),
                new CutContour(
                    CutOperation.Pocket,
                    new Shape(
                        new(60, -5),
                        [
                            new LineSegment(new(80, -5)),
                            new ArcSegment(new(80, 5), 1),
                            new LineSegment(new(60, 5)),
                            new ArcSegment(new(60, -5), 1),
                        ],
                        closed: true
                    ),
                    2.5
                ),
                new CutContour(CutOperation.Engrave, Shape.Line(new(-5, 0), new(20, 0))),
            ]
        )
        {
            Holes = [new CutHole(new(90, 18), 6.4), new CutHole(new(12, -12.5), 8, 12)],
            Texts = [new CutText("señal ½", new(14, -10), 5, 0)],
        };
}

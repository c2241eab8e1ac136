using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Jigs.Brackets;
using Formwright.Jigs.Parts;
using Formwright.Sheets.Body;

namespace Formwright.Sheets.Brackets;

/// <summary>The bracket at full size: from above, from the side with board, bolt and ribs, its layers and hardware, how it is built.</summary>
internal static class BracketSheet
{
    private const double ColumnMm = 121;
    private const double NotesMm = 84;
    private const double WidthMm = 254;

    public static NamedSheet Of(JigPlan plan)
    {
        View above = new([.. Above(plan)]) { Label = SheetsWords.Of["jig.view-above"] };
        View side = new([.. FromSide(plan)], ViewFrame.Section)
        {
            Label = SheetsWords.Of["jig.view-side"],
        };
        Block[] blocks =
        [
            new ViewBlock(side),
            new Notes(
                SheetsWords.Of["jig.bracket-how"],
                [
                    SheetsWords.Of["jig.bracket-how-1"],
                    SheetsWords.Of["jig.bracket-how-2"],
                    SheetsWords.Of["jig.bracket-how-3"],
                    SheetsWords.Of["jig.bracket-how-4"],
                ],
                NotesMm
            )
            {
                Numbered = true,
            },
            new ViewBlock(above),
            Layers(plan),
            Hardware(plan),
            new Cautions(
                [
                    SheetsWords.Of["caution.router"],
                    SheetsWords.Of["caution.elastic"],
                    SheetsWords.Of["caution.dust"],
                ],
                ColumnMm
            ),
        ];
        return new NamedSheet(
            "jig-bracket",
            Layout.Of(JigSheets.Title(plan, "sheet.jig-bracket"), [], blocks, WidthMm),
            IsTiled: false
        );
    }

    private static Table Layers(JigPlan plan) =>
        new(
            SheetsWords.Of["jig.layers"],
            [
                new Column(""),
                new Column(SheetsWords.Of["column.each"], Align.Right, 22),
                new Column(SheetsWords.Of["column.in-all"], Align.Right, 22),
                new Column(SheetsWords.Of["column.mm"], Align.Right, 18),
            ],
            [
                .. plan
                    .Parts.Where(part =>
                        part.Id.StartsWith("jig-bracket", StringComparison.Ordinal)
                    )
                    .Select(part =>
                        (IReadOnlyList<string>)
                            [
                                part.Name,
                                $"{part.Quantity / plan.Brackets}",
                                $"{part.Quantity}",
                                Figures.Mm(part.ThicknessMm),
                            ]
                    ),
            ]
        )
        {
            WidthMm = ColumnMm,
        };

    private static Table Hardware(JigPlan plan) =>
        new(
            SheetsWords.Of["jig.hardware"],
            [new Column(""), new Column("", Align.Right, 40)],
            [
                [
                    SheetsWords.Of.Format("jig.bolts", plan.Hardware.DiameterMm),
                    $"{plan.Hardware.Bolts}",
                ],
                [
                    SheetsWords.Of["jig.bolt-length"],
                    $"{Figures.Fixed(plan.Hardware.LengthMm, 0)} mm",
                ],
                [
                    SheetsWords.Of.Format("jig.nuts", plan.Hardware.DiameterMm),
                    $"{plan.Hardware.Bolts}",
                ],
                [
                    SheetsWords.Of.Format("jig.washers", plan.Hardware.DiameterMm),
                    $"{2 * plan.Hardware.Bolts}",
                ],
            ]
        )
        {
            WidthMm = ColumnMm,
        };

    private static IEnumerable<Item> Above(JigPlan plan)
    {
        BracketDesign bracket = plan.Design.Bracket;
        BracketShape shape = plan.Shape;
        double half = shape.WidthMm / 2;
        yield return new Region(Shape.Polyline(shape.Plan, closed: true))
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        Part bottom = plan.Parts[1];
        yield return new Line(Shape.Of(bottom.Insides[0]), LineStyle.Outline);
        if (plan.Parts[^1].Id == "jig-bracket-top")
        {
            yield return new Line(Shape.Of(plan.Parts[^1].Insides[0]), LineStyle.Outline);
        }

        // The step at the foot is behind the face; the notches are sawn into the flanks.
        yield return new Line(
            new Point(bracket.ReliefDepthMm, -half),
            new Point(bracket.ReliefDepthMm, half),
            LineStyle.Hidden
        );
        yield return new Line(
            new Point(bracket.BaseMm - bracket.ReliefDepthMm, -half),
            new Point(bracket.BaseMm - bracket.ReliefDepthMm, half),
            LineStyle.Hidden
        );
        yield return new Line(
            new Point(-8, 0),
            new Point(bracket.BaseMm + 8, 0),
            LineStyle.Centreline
        );
        Point front = new(0, bracket.FrontFaceMm / 2);
        yield return new LinearDimension(
            new Point(0, -bracket.FrontFaceMm / 2),
            front,
            Side.Left,
            9
        );
        yield return new LinearDimension(
            new Point(bracket.BaseMm, -bracket.RearFaceMm / 2),
            new Point(bracket.BaseMm, bracket.RearFaceMm / 2),
            Side.Right,
            9
        );
        yield return new LinearDimension(
            front,
            new Point(bracket.BaseMm, bracket.RearFaceMm / 2),
            Side.Above,
            half - (bracket.FrontFaceMm / 2) + 22
        );
        yield return new LinearDimension(front, new Point(shape.WidestAtMm, half), Side.Above, 14);
        yield return new LinearDimension(
            new Point(shape.WidestAtMm, -half),
            new Point(shape.WidestAtMm, half),
            Side.Left,
            shape.WidestAtMm + 18
        );
        Point low = new(0, -bracket.FrontFaceMm / 2);
        yield return new LinearDimension(
            low,
            new Point(bracket.BoltFromMm, 0),
            Side.Below,
            half + 2
        );
        yield return new LinearDimension(
            low,
            new Point(bracket.BoltToMm, 0),
            Side.Below,
            half + 12
        );
        yield return new Leader(
            new Point(shape.WidestAtMm * 0.4, -Across(shape, 0.4)),
            new Vector(-14, -22),
            $"{Figures.Mm(bracket.FrontSlopeDeg, 1)}°"
        );
        double rear = shape.WidestAtMm + ((bracket.BaseMm - shape.WidestAtMm) * 0.6);
        yield return new Leader(
            new Point(rear, -half + ((half - (bracket.RearFaceMm / 2)) * 0.6)),
            new Vector(26, -16),
            $"{Figures.Mm(bracket.RearSlopeDeg, 1)}°"
        );
    }

    private static double Across(BracketShape shape, double share)
    {
        double near = shape.FaceWidthMm(BracketFace.Front) / 2;
        return near + (((shape.WidthMm / 2) - near) * share);
    }

    private static IEnumerable<Item> FromSide(JigPlan plan)
    {
        BracketDesign bracket = plan.Design.Bracket;
        double board = plan.Design.BoardThicknessMm;
        double height = bracket.HeightMm;
        double front = Lean(bracket.FrontAngleDeg, height);
        double rear = Lean(bracket.RearAngleDeg, height);
        double step = bracket.ReliefDepthMm;
        double stepTop = bracket.ReliefHeightMm;
        double stepFront = Lean(bracket.FrontAngleDeg, stepTop);
        double stepRear = Lean(bracket.RearAngleDeg, stepTop);
        yield return new Region(Shape.Rectangle(Box.Of(-46, -board, bracket.BaseMm + 22, 0)))
        {
            Edge = LineStyle.Outline,
            HatchDegrees = 45,
            HatchSpacingMm = 4,
        };
        yield return new Region(
            Shape.Polyline(
                [
                    new(step, 0),
                    new(bracket.BaseMm - step, 0),
                    new(bracket.BaseMm - step, stepTop),
                    new(bracket.BaseMm + stepRear, stepTop),
                    new(bracket.BaseMm + rear, height),
                    new(-front, height),
                    new(-stepFront, stepTop),
                    new(step, stepTop),
                ],
                closed: true
            )
        )
        {
            Fill = Tone.Wood,
            Edge = LineStyle.Outline,
        };
        for (int i = 1; i < plan.Shape.Layers; i++)
        {
            double z = i * bracket.LayerMm;
            if (z < height - 0.5)
            {
                yield return new Line(
                    new Point(-Lean(bracket.FrontAngleDeg, z), z),
                    new Point(bracket.BaseMm + Lean(bracket.RearAngleDeg, z), z),
                    LineStyle.FineRule
                );
            }
        }

        double middle = (bracket.BoltFromMm + bracket.BoltToMm) / 2;
        double seat = plan.Shape.SeatMm;
        double hole = plan.Hardware.HoleMm / 2;
        double washer = bracket.WasherDiameterMm / 2;
        yield return new Line(
            Shape.Rectangle(Box.Of(bracket.BoltFromMm - hole, 0, bracket.BoltToMm + hole, seat)),
            LineStyle.Hidden
        );
        if (seat < height)
        {
            yield return new Line(
                Shape.Rectangle(
                    Box.Of(bracket.BoltFromMm - washer, seat, bracket.BoltToMm + washer, height)
                ),
                LineStyle.Hidden
            );
        }

        double bolt = plan.Hardware.DiameterMm;
        yield return new Region(
            Shape.Rectangle(
                Box.Of(
                    middle - (bolt / 2),
                    -board,
                    middle + (bolt / 2),
                    plan.Hardware.LengthMm - board
                )
            )
        )
        {
            Fill = Tone.Paper,
            Edge = LineStyle.Detail,
        };
        yield return new Region(
            Shape.Rectangle(Box.Of(middle - bolt, -board - (0.65 * bolt), middle + bolt, -board))
        )
        {
            Fill = Tone.Paper,
            Edge = LineStyle.Detail,
        };
        yield return new Region(
            Shape.Rectangle(
                Box.Of(
                    middle - (0.8 * bolt),
                    seat + (0.2 * bolt),
                    middle + (0.8 * bolt),
                    seat + bolt
                )
            )
        )
        {
            Fill = Tone.Paper,
            Edge = LineStyle.Detail,
        };
        yield return new Line(
            new Point(middle, -board - 10),
            new Point(middle, height + 6),
            LineStyle.Centreline
        );
        double notch = bracket.NotchHeightMm;
        yield return new Line(
            Shape.Rectangle(
                Box.Of(
                    -Lean(bracket.FrontAngleDeg, notch),
                    notch - (bracket.NotchWidthMm / 2),
                    bracket.BaseMm + Lean(bracket.RearAngleDeg, notch),
                    notch + (bracket.NotchWidthMm / 2)
                )
            ),
            LineStyle.Pocket
        );
        foreach (Item item in Ribs(plan))
        {
            yield return item;
        }

        yield return new LinearDimension(
            new Point(bracket.BaseMm + rear, 0),
            new Point(bracket.BaseMm + rear, height),
            Side.Right,
            34
        );
        yield return new LinearDimension(
            new Point(bracket.BaseMm, 0),
            new Point(bracket.BaseMm, notch),
            Side.Right,
            24
        );
        yield return new LinearDimension(
            new Point(bracket.BaseMm, 0),
            new Point(bracket.BaseMm, seat),
            Side.Right,
            12
        );
        yield return new Leader(
            new Point(bracket.BaseMm * 0.9, notch),
            new Vector(16, 34),
            SheetsWords.Of.Format("jig.notch", bracket.NotchWidthMm, bracket.NotchDepthMm)
        );
        yield return new Leader(
            new Point(step / 2, stepTop / 2),
            new Vector(-22, -34),
            SheetsWords.Of.Format("jig.step", step, stepTop)
        );
        yield return new Leader(
            new Point(-Lean(bracket.FrontAngleDeg, height * 0.8), height * 0.8),
            new Vector(-16, 18),
            $"{Figures.Mm(bracket.FrontAngleDeg, 1)}°"
        );
    }

    // The lowest rib of the first instrument with its soundboard's edge, as the front face meets it.
    private static IEnumerable<Item> Ribs(JigPlan plan)
    {
        RibLine rib = plan.Members[0].Rib;
        double thickness = rib.Guitar.Design.Ribs.ThicknessMm;
        double edge = rib.Guitar.Design.Soundboard.EdgeThicknessMm;
        double overhang = rib.Guitar.Design.Soundboard.OverhangMm;
        double height = rib.RibHeightMm((rib.FromMm + rib.ToMm) / 2);
        double stand = -Lean(plan.Design.Bracket.FrontAngleDeg, plan.Design.Bracket.HeightMm);
        double face = Math.Min(0, stand);
        yield return new Line(
            Shape.Rectangle(Box.Of(face - thickness, edge, face, height)),
            LineStyle.Detail
        );
        yield return new Line(
            Shape.Rectangle(Box.Of(face - 38, 0, face + overhang, edge)),
            LineStyle.Detail
        );
        yield return new Label(
            SheetsWords.Of["jig.rib"],
            new Point(face - thickness - 3, height * 0.5)
        )
        {
            Align = Align.Right,
            Rise = Rise.Middle,
        };
        yield return new Label(SheetsWords.Of["jig.soundboard"], new Point(face - 38, edge))
        {
            ShiftMm = new(0, 1.5),
        };
    }

    private static double Lean(double angleDeg, double heightMm) =>
        heightMm * Math.Tan((angleDeg - 90) * Math.PI / 180);
}

using Formwright.Curves;
using Formwright.Design.Reading;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Jigs.Spine;

namespace Formwright.Sheets.Tooling;

/// <summary>Spine and feet under the workboard: from the side, in section, and what they do against sag and warp.</summary>
internal static class SpineSheet
{
    private const double WidthMm = 168;
    private const double ByLayersMm = 84;

    public static NamedSheet Of(Guitar guitar, SpinePlan plan)
    {
        Sheet sheet = new(Titles.Of(guitar, "sheet.spine"), Paper.A4);
        Box area = sheet.Area;
        View side = new View([.. Side(guitar, plan)], ViewFrame.Section)
        {
            Scale = 0.16,
            Label = SheetsWords.Of["spine.side"],
        }.TopLeftAt(area.TopLeft);
        double below = side.Bounds().BottomMm - 7;
        View section = new View([.. Section(guitar, plan)], ViewFrame.Section)
        {
            Scale = 0.4,
            Label = SheetsWords.Of["spine.section"],
        }.TopLeftAt(new Point(area.LeftMm, below));
        Table byLayers = ByLayers(guitar, plan);
        double under = Math.Min(section.Bounds().BottomMm, below - byLayers.Size.HeightMm) - 6;
        return new NamedSheet(
            "spine",
            sheet
                .Add(side, section)
                .Add(Flow.Down(new Point(area.LeftMm + WidthMm - ByLayersMm, below), 0, byLayers))
                .Add(
                    Flow.Down(
                        new Point(area.LeftMm, under),
                        5,
                        Figured(plan),
                        new Notes(SheetsWords.Of["spine.how"], [.. How(plan)], WidthMm)
                        {
                            Numbered = true,
                        }
                    )
                ),
            IsTiled: false
        );
    }

    // Nut on the left, the board's face up.
    private static IEnumerable<Item> Side(Guitar guitar, SpinePlan plan)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        BoardFeet feet = plan.Feet;
        double start = plan.FromMm;
        double end = guitar.TailMm + board.MarginMm;
        double under = -board.ThicknessMm;
        double low = under - plan.DepthMm;
        double bench = low - feet.HeightMm;
        yield return Wood(Box.Of(start, under, end, 0), null);
        if (plan.DepthMm > 0)
        {
            yield return Wood(Box.Of(start, low, feet.SpineEndMm, under), 45);
        }

        foreach (double at in new[] { feet.NeckMm, feet.TailMm - feet.LengthMm })
        {
            yield return Wood(Box.Of(at, bench, at + feet.LengthMm, low), 135);
        }

        yield return new Line(new Point(start, bench), new Point(end, bench), LineStyle.Detail);
        yield return new LinearDimension(
            new Point(end, bench),
            new Point(end, under),
            Drawing.Side.Right,
            5
        );
        yield return new OrdinateDimensions(
            new Point(0, bench),
            [
                new Station(new Point(feet.NeckMm + feet.LengthMm, bench), ""),
                new Station(new Point(feet.TailMm - feet.LengthMm, bench), ""),
                new Station(new Point(feet.TailMm, bench), ""),
                new Station(new Point(end, bench), ""),
            ],
            Drawing.Side.Below,
            4
        );
        foreach (
            (string key, double x) in new[]
            {
                ("station.nut", 0.0),
                ("station.join", guitar.JoinMm),
                ("station.tail", guitar.TailMm),
            }
        )
        {
            yield return new Line(new Point(x, 0), new Point(x, 16), LineStyle.Witness);
            yield return new Label(SheetsWords.Of[key], new Point(x, 20)) { Align = Align.Centre };
        }
    }

    private static IEnumerable<Item> Section(Guitar guitar, SpinePlan plan)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        double half = board.NeckWidthMm / 2;
        double under = -board.ThicknessMm;
        yield return Wood(Box.Of(-half, under, half, 0), null);
        double wide = plan.WidthMm / 2;
        double low = under - plan.DepthMm;
        double layer = plan.Design.LayerThicknessMm;
        for (int i = 0; i < plan.Design.Layers; i++)
        {
            double hatch = i % 2 == 0 ? 45 : 135;
            yield return plan.Design.Lie == LayersLie.OnEdge
                ? Wood(Box.Of(-wide + (i * layer), low, -wide + ((i + 1) * layer), under), hatch)
                : Wood(Box.Of(-wide, under - ((i + 1) * layer), wide, under - (i * layer)), hatch);
        }

        yield return new LinearDimension(
            new Point(half, under),
            new Point(half, 0),
            Drawing.Side.Right,
            6
        );
        if (plan.DepthMm > 0)
        {
            yield return new LinearDimension(
                new Point(half, low),
                new Point(half, under),
                Drawing.Side.Right,
                6
            );
            yield return new LinearDimension(
                new Point(-wide, low),
                new Point(wide, low),
                Drawing.Side.Below,
                6
            );
        }
    }

    private static Table Figured(SpinePlan plan)
    {
        SpineDesign spine = plan.Design;
        string lie = SheetsWords.Of[spine.Lie == LayersLie.OnEdge ? "spine.on-edge" : "spine.flat"];
        return new Table(
            SheetsWords.Of["spine.figures"],
            [new Column(""), new Column("", Align.Right, 30) { Strong = true }],
            [
                [
                    SheetsWords.Of.Format(
                        "spine.layers-of",
                        spine.Layers,
                        Figures.Mm(spine.LayerThicknessMm),
                        lie
                    ),
                    spine.Wood is { } wood
                        ? InstrumentWords.Of[$"species.{Choices.NameOf(wood)}"]
                        : SheetsWords.Of["spine.plywood"],
                ],
                Row("spine.stiffness", Figures.Fixed(plan.NeckStiffnessNmm2 / 1e9, 1)),
                Row("spine.bare-stiffness", Figures.Fixed(plan.BareStiffnessNmm2 / 1e9, 1)),
                [SheetsWords.Of.Format("spine.sag", spine.LoadN), Figures.Fixed(plan.SagMm, 2)],
                Row("spine.tail-sag", Figures.Fixed(plan.TailSagMm, 2)),
                [
                    SheetsWords.Of.Format(
                        "spine.warp",
                        spine.TopChangePercent,
                        spine.BottomChangePercent
                    ),
                    Figures.Fixed(plan.WarpMm, 2),
                ],
                Row("spine.bare-warp", Figures.Fixed(plan.BareWarpMm, 2)),
                Row("spine.foot", Figures.Mm(plan.Feet.HeightMm)),
                Row("spine.room", Figures.Mm(plan.Feet.RoomMm)),
                Row("spine.reach", Figures.Mm(plan.Feet.ReachMm)),
            ]
        )
        {
            WidthMm = WidthMm,
        };
    }

    private static Table ByLayers(Guitar guitar, SpinePlan plan)
    {
        int most = Math.Max(8, Math.Max(plan.Design.Layers, plan.LeastLayers ?? 0));
        return new Table(
            SheetsWords.Of["spine.by-layers"],
            [
                new Column(SheetsWords.Of["spine.layers-head"], Align.Right, 20),
                new Column(SheetsWords.Of["column.mm"], Align.Right, 24) { Strong = true },
                new Column(
                    SheetsWords.Of.Format("spine.holds", guitar.Design.Workboard.RampToleranceMm),
                    Align.Right
                ),
            ],
            [
                .. plan
                    .ByLayers.Where(row => row.Layers <= most)
                    .Select(row =>
                        (IReadOnlyList<string>)
                            [
                                $"{row.Layers}",
                                Figures.Fixed(row.WarpMm, 2),
                                SheetsWords.Of[row.Holds ? "spine.yes" : "spine.no"],
                            ]
                    ),
            ]
        )
        {
            WidthMm = ByLayersMm,
        };
    }

    private static IEnumerable<string> How(SpinePlan plan)
    {
        if (plan.Design.Layers > 0)
        {
            yield return SheetsWords.Of[
                plan.Design.Lie == LayersLie.OnEdge ? "spine.how-1-edge" : "spine.how-1-flat"
            ];
        }

        yield return SheetsWords.Of.Format("spine.how-2", plan.Feet.TailMm);
        yield return SheetsWords.Of["spine.how-3"];
    }

    private static IReadOnlyList<string> Row(string key, string figure) =>
        [SheetsWords.Of[key], figure];

    private static Region Wood(Box box, double? hatch) =>
        new(Shape.Rectangle(box))
        {
            Fill = hatch is null ? Tone.Wood : null,
            Edge = LineStyle.Outline,
            HatchDegrees = hatch,
            HatchSpacingMm = 2.5,
        };
}

using CsCheck;
using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Parts;
using Formwright.Jigs.Stock;
using Formwright.Testing;
using NetTopologySuite.Geometries;
using Xunit;

namespace Formwright.Jigs.Tests;

/// <summary>Nests judged by NetTopologySuite on the parts' own arcs, not by the rows that placed them.</summary>
public sealed class NestTests
{
    // Chords of the judge, half a degree of turning: on a radius of 400 mm their sagitta is 0.004 mm.
    private const double JudgeMm = 0.01;

    [Theory]
    [InlineData("heron")]
    [InlineData("dunlin")]
    [InlineData("plover")]
    public void All_tooling_lies_apart_and_inside(string model)
    {
        Guitar guitar = Examples.Guitar(model);
        Tooling tooling = Tooling.Of(guitar);
        StockPlan plan = StockPlanner.Of(
            guitar.Design.Stock,
            tooling.Parts,
            HardwareList.Of(guitar, tooling),
            500_000
        );
        Assert.Empty(plan.Findings);
        Assert.Equal(
            tooling.Parts.Sum(part => part.Quantity),
            plan.Sheets.Sum(sheet => sheet.Parts.Count)
        );
        Assert.All(plan.CutList, row => Assert.Equal(row.Part.Quantity, row.Sheets.Count));
        Judge(plan);
    }

    [Fact]
    public void Parts_of_any_shape_lie_apart_and_inside() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 1_000_000], Gen.Double[0, 8], Gen.Double[0, 25])
            .Holds(
                (count, seed, kerf, margin) =>
                {
                    Random random = new(seed);
                    Part[] parts = [.. Enumerable.Range(0, count).Select(i => Bent(random, i))];
                    StockDesign stock = Stock(kerf, margin, Sheet(700, 500, grain: seed % 2 == 0));
                    StockPlan plan = StockPlanner.Of(stock, parts, [], 20_000);
                    Judge(plan);
                    Assert.Equal(count, plan.Sheets.Sum(sheet => sheet.Parts.Count));
                },
                iter: 60
            );

    [Fact]
    public void Grain_is_kept_where_part_and_sheet_have_it()
    {
        Part along = Rectangle("workboard", 400, 60) with { Grain = PartGrain.AlongLength };
        Part any = Rectangle("overlay", 400, 60);
        StockPlan grained = StockPlanner.Of(
            Stock(3, 5, Sheet(1000, 500, grain: true)),
            [along, any],
            []
        );
        PlacedPart kept = grained.Sheets[0].Parts.Single(placed => placed.Part == along);
        Assert.Equal(0, Math.Sin(kept.AngleRad), 1e-12);
        PlacedPart free = StockPlanner
            .Of(Stock(3, 5, Sheet(1000, 500, grain: false)), [along], [])
            .Sheets[0]
            .Parts.Single();
        // Across the sheet it takes the least length.
        Assert.Equal(1, Math.Abs(Math.Sin(free.AngleRad)), 1e-12);
    }

    [Fact]
    public void A_part_is_nested_in_the_opening_of_another()
    {
        Part ring = Rectangle("template-full", 300, 300) with
        {
            Insides = [Rectangle("x", 200, 200, 50).Outside],
        };
        Part inner = Rectangle("template-half", 190, 190);
        StockPlan plan = StockPlanner.Of(
            Stock(3, 10, Sheet(1000, 320, grain: false)),
            [ring, inner],
            []
        );
        SheetNest nest = Assert.Single(plan.Sheets);
        Assert.Equal(10 + 300 + 3, nest.UsedLengthMm, 1e-6);
        Judge(plan);
    }

    [Fact]
    public void Rectangles_that_tile_a_strip_are_tiled()
    {
        // Eight of 100 × 50 in two rows: four columns of 50 with three kerfs between, where 24 turns could also lay them askew.
        Part each = Rectangle("overlay", 100, 50) with
        {
            Quantity = 8,
        };
        StockPlan plan = StockPlanner.Of(
            Stock(2, 0, Sheet(1000, 204, grain: false)),
            [each],
            [],
            400_000
        );
        Assert.Equal((4 * 50) + (3 * 2) + 2, plan.Sheets.Single().UsedLengthMm, 1e-6);
        Judge(plan);
    }

    [Fact]
    public void The_same_parts_give_the_same_nest_on_any_number_of_cores()
    {
        Guitar guitar = Examples.Guitar("plover");
        Part[] parts = [.. Tooling.Of(guitar).Parts];
        StockPlan first = StockPlanner.Of(guitar.Design.Stock, parts, [], 300_000);
        StockPlan again = StockPlanner.Of(guitar.Design.Stock, parts, [], 300_000, cores: 1);
        Assert.Equal(
            first.Sheets.SelectMany(sheet => sheet.Parts),
            again.Sheets.SelectMany(sheet => sheet.Parts)
        );
    }

    [Fact]
    public void What_is_at_hand_goes_first_and_what_is_bought_costs_least()
    {
        Part small = Rectangle("overlay", 180, 80) with { Quantity = 2 };
        StockDesign stock = Stock(
            3,
            5,
            Sheet(400, 100, grain: false) with
            {
                Count = 1,
                Price = 0,
            },
            Sheet(1000, 500, grain: false) with
            {
                Price = 30,
            },
            Sheet(500, 250, grain: false) with
            {
                Price = 12,
            }
        );
        StockPlan plan = StockPlanner.Of(stock, [small, Rectangle("packing", 200, 200)], []);
        Assert.Equal([400, 500], plan.Sheets.Select(sheet => sheet.Stock.LengthMm));
        Assert.Equal(12, plan.Cost.Total);
    }

    [Fact]
    public void A_part_larger_than_the_sheet_says_what_would_do()
    {
        Part large = Rectangle("workboard", 900, 300);
        StockDesign stock = Stock(3, 10, Sheet(700, 500, grain: true));
        Findings.Finding finding = Assert.Single(StockCheck.Of(stock, [large]));
        Assert.Equal(StockRules.PartLargerThanSheet, finding.Rule);
        Assert.Contains("900 × 300", finding.Message, StringComparison.Ordinal);
        Assert.Contains("920 × 320", finding.Cure, StringComparison.Ordinal);
        Assert.Empty(StockPlanner.Of(stock, [large], []).Sheets);
        // What it says does.
        StockDesign cured = Stock(3, 10, Sheet(920, 320, grain: true));
        Assert.Empty(StockCheck.Of(cured, [large]));
        Assert.Single(StockPlanner.Of(cured, [large], []).Sheets);
    }

    [Fact]
    public void Too_few_sheets_say_how_many_more_would_do()
    {
        Part each = Rectangle("overlay", 400, 300) with { Quantity = 5 };
        StockSheetDesign sheet = Sheet(850, 330, grain: false);
        StockPlan plan = StockPlanner.Of(Stock(3, 10, sheet with { Count = 1 }), [each], []);
        Findings.Finding finding = Assert.Single(plan.Findings);
        Assert.Equal(3, finding.Measured);
        Assert.StartsWith("2 more", finding.Cure, StringComparison.Ordinal);
        Assert.Empty(StockPlanner.Of(Stock(3, 10, sheet with { Count = 3 }), [each], []).Findings);
    }

    [Theory]
    [InlineData(18, 18)]
    [InlineData(17.1, 18)] // EN 315: 18 mm is 17.06 to 18.74
    [InlineData(18.7, 18)]
    [InlineData(11.3, 12)] // 12 mm is 11.24 to 12.56
    public void A_measured_thickness_takes_the_sheet_whose_tolerance_holds_it(
        double thickness,
        double nominal
    )
    {
        Part part = Rectangle("overlay", 100, 100) with { ThicknessMm = thickness };
        StockPlan plan = StockPlanner.Of(Examples.Design("heron").Stock, [part], []);
        Assert.Equal(nominal, plan.Sheets.Single().Stock.ThicknessMm);
    }

    [Fact]
    public void A_thickness_that_is_not_sold_is_told()
    {
        Part part = Rectangle("overlay", 100, 100) with { ThicknessMm = 19.05 };
        StockDesign stock = Examples.Design("heron").Stock;
        Assert.Equal(StockRules.NoSheet, Assert.Single(StockCheck.Of(stock, [part])).Rule);
        StockPlan plan = StockPlanner.Of(stock, [part], []);
        Assert.Empty(plan.Sheets);
        Assert.Empty(plan.CutList.Single().Sheets);
    }

    private static void Judge(StockPlan plan)
    {
        foreach (SheetNest nest in plan.Sheets)
        {
            Envelope inside = new(
                nest.MarginMm,
                nest.Stock.LengthMm - nest.MarginMm,
                nest.MarginMm,
                nest.Stock.WidthMm - nest.MarginMm
            );
            inside.ExpandBy(JudgeMm);
            (PlacedPart Placed, Polygon Shape)[] shapes =
            [
                .. nest.Parts.Select(placed => (placed, ShapeOf(placed))),
            ];
            foreach ((PlacedPart placed, Polygon shape) in shapes)
            {
                Assert.True(shape.IsValid);
                Assert.True(inside.Contains(shape.EnvelopeInternal), placed.Part.Id);
                Assert.True(
                    shape.EnvelopeInternal.MaxX + nest.KerfMm <= nest.UsedLengthMm + JudgeMm
                        || nest.UsedLengthMm == nest.Stock.LengthMm
                );
            }

            for (int i = 0; i < shapes.Length; i++)
            {
                for (int k = i + 1; k < shapes.Length; k++)
                {
                    double apart = shapes[i].Shape.Distance(shapes[k].Shape);
                    Assert.True(
                        apart >= nest.KerfMm - JudgeMm
                            && !shapes[i].Shape.Overlaps(shapes[k].Shape),
                        $"{shapes[i].Placed.Part.Id} and {shapes[k].Placed.Part.Id}: {apart}"
                    );
                }
            }

            double area = shapes.Sum(each => each.Shape.Area);
            Assert.Equal(area, nest.PartsAreaMm2, area * 1e-4);
            Assert.InRange(nest.UsedFraction, 0, 1);
            Assert.InRange(nest.CutFraction, nest.UsedFraction - 1e-12, 1);
            JudgeOffcuts(nest, shapes);
        }

        Assert.True(plan.Sheets.Count >= plan.LeastSheets);
        Assert.InRange(plan.UsedFraction, 0, 1);
    }

    private static void JudgeOffcuts(SheetNest nest, (PlacedPart Placed, Polygon Shape)[] shapes)
    {
        for (int i = 0; i < nest.Offcuts.Count; i++)
        {
            Geometry offcut = BoxOf(nest.Offcuts[i]);
            Assert.All(
                shapes,
                each => Assert.True(each.Shape.Distance(offcut) >= nest.KerfMm - JudgeMm)
            );
            for (int k = i + 1; k < nest.Offcuts.Count; k++)
            {
                Assert.True(BoxOf(nest.Offcuts[k]).Distance(offcut) >= 0);
                Assert.False(BoxOf(nest.Offcuts[k]).Overlaps(offcut));
            }
        }

        static Geometry BoxOf(Offcut offcut) =>
            GeometryFactory.Default.ToGeometry(
                new Envelope(offcut.Box.Min.X, offcut.Box.Max.X, offcut.Box.Min.Y, offcut.Box.Max.Y)
            );
    }

    private static Polygon ShapeOf(PlacedPart placed) =>
        new(
            (LinearRing)Polygons.Of(placed.Apply(placed.Part.Outside)).ExteriorRing,
            [
                .. placed.Part.Insides.Select(edge =>
                    (LinearRing)Polygons.Of(placed.Apply(edge)).ExteriorRing
                ),
            ]
        );

    private static StockDesign Stock(
        double kerf,
        double margin,
        params StockSheetDesign[] sheets
    ) => new(kerf, margin, 50, "EUR", sheets, []);

    private static StockSheetDesign Sheet(double length, double width, bool grain) =>
        new(StockMaterial.Plywood, 18, length, width, grain, 0, 10);

    private static Part Rectangle(string id, double length, double width, double at = 0) =>
        Make(
            id,
            [
                new(new Curves.Point(at, at), 0),
                new(new Curves.Point(at + length, at), 0),
                new(new Curves.Point(at + length, at + width), 0),
                new(new Curves.Point(at, at + width), 0),
            ]
        );

    // A sickle of a random bend and width, as mould layers and templates are; some lie face down, some keep the grain.
    private static Part Bent(Random random, int number)
    {
        double length = 60 + (random.NextDouble() * 240);
        double width = 15 + (random.NextDouble() * 40);
        double bulge = (random.NextDouble() * 1.2) - 0.6;
        Part part = Make(
            $"support-block{number}",
            [
                new(new Curves.Point(0, 0), bulge),
                new(new Curves.Point(length, 0), 0),
                new(new Curves.Point(length, width), -bulge),
                new(new Curves.Point(0, width), 0),
            ]
        );
        return part with
        {
            Grain = random.Next(3) == 0 ? PartGrain.AlongLength : PartGrain.Any,
            Pockets = random.Next(3) == 0 ? [new Pocket(part.Outside, 2, FromBelow: true)] : [],
        };
    }

    private static Part Make(string id, ArcVertex[] edge) =>
        new(id, "material.plywood", 18, 1, new ArcPath(edge, true, 0, 0), [], [], [], []);
}

using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Jigs.Stock;
using Formwright.Sheets.Cutting;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class StockSheetTests
{
    [Theory]
    [InlineData("heron", "en", ReliefMethod.Carved)]
    [InlineData("dunlin", "es", ReliefMethod.CorkOverlay)]
    [InlineData("plover", "es", ReliefMethod.PlywoodOverlay)]
    public void Order_cut_list_and_nests_have_no_flaw(
        string model,
        string language,
        ReliefMethod method
    )
    {
        int nests = 0;
        NamedSheet[] sheets = Flaws.NoneIn(
            language,
            () =>
            {
                (Guitar guitar, Jigs.Tooling tooling, StockPlan plan) = Plan(model, method);
                nests = plan.Sheets.Count;
                return SheetSet
                    .Of(
                        guitar,
                        NeckAndAction.Of(guitar),
                        BodyPlan.Of(guitar),
                        tooling,
                        nest: () => plan
                    )
                    .Where(sheet =>
                        sheet.Id is "cut-list"
                        || sheet.Id.StartsWith("nest", StringComparison.Ordinal)
                        || sheet.Id.StartsWith("order", StringComparison.Ordinal)
                    );
            }
        );
        Assert.Equal(
            nests,
            sheets.Count(sheet => sheet.Id.StartsWith("nest", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void A_nesting_sheet_is_true_to_its_scale()
    {
        (Guitar guitar, Jigs.Tooling tooling, StockPlan plan) = Plan("heron", ReliefMethod.Carved);
        foreach (
            NamedSheet named in SheetSet.Of(
                guitar,
                NeckAndAction.Of(guitar),
                BodyPlan.Of(guitar),
                tooling,
                nest: () => plan
            )
        )
        {
            if (plan.Sheets.FirstOrDefault(each => each.Id == named.Id) is { } nest)
            {
                View view = named.Sheet.Items.OfType<View>().Single();
                Point from = view.Placement.Apply(new Point(0, 0));
                Point to = view.Placement.Apply(new Point(nest.Stock.LengthMm, nest.Stock.WidthMm));
                Assert.Equal(nest.Stock.LengthMm * view.Scale, to.X - from.X, 1e-9);
                Assert.Equal(nest.Stock.WidthMm * view.Scale, to.Y - from.Y, 1e-9);
                Assert.Contains(view.Scale, new[] { 1, 0.5, 0.2, 0.1, 0.05 });
            }
        }
    }

    [Fact]
    public void A_cut_file_of_a_sheet_lays_every_hole_where_its_part_lies()
    {
        (_, _, StockPlan plan) = Plan("heron", ReliefMethod.Carved);
        foreach (SheetNest nest in plan.Sheets)
        {
            CutPart cut = CutNests.Of(nest);
            Assert.Equal(
                nest.Parts.Count,
                cut.Contours.Count(each => each.Operation == CutOperation.OutsideCut)
            );
            Point[] expected =
            [
                .. nest.Parts.SelectMany(placed =>
                    placed.Part.Holes.Select(hole => placed.Apply(hole.Centre))
                ),
            ];
            Assert.Equal(expected.Length, cut.Holes.Count);
            Assert.All(
                expected.Zip(cut.Holes),
                pair => Assert.Equal(0, pair.First.DistanceTo(pair.Second.Centre), 1e-9)
            );
            Box box = cut.Bounds();
            Assert.True(box.Min.X >= nest.MarginMm - 1e-6 && box.Min.Y >= nest.MarginMm - 1e-6);
            Assert.True(box.Max.X <= nest.Stock.LengthMm - nest.MarginMm + 1e-6);
            Assert.Equal(
                nest.Parts.Select(placed => $"{placed.Number}"),
                cut.Texts.Select(text => text.Text)
            );
        }
    }

    private static (Guitar, Jigs.Tooling, StockPlan) Plan(string model, ReliefMethod method)
    {
        InstrumentDesign design = DesignText
            .Load(Repository.PathOf("examples", $"{model}.toml"))
            .Design!;
        Guitar guitar = Guitar
            .Build(design with { Workboard = design.Workboard with { Relief = method } })
            .Guitar!;
        Jigs.Tooling tooling = Jigs.Tooling.Of(guitar);
        StockPlan plan = StockPlanner.Of(
            guitar.Design.Stock,
            tooling.Parts,
            HardwareList.Of(guitar, tooling),
            200_000
        );
        return (guitar, tooling, plan);
    }
}

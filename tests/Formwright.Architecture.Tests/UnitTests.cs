using System.Reflection;
using System.Text.RegularExpressions;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>A public figure carries its unit in its name (house rule 6); what has no unit, or several, is listed here with the reason.</summary>
public sealed partial class UnitTests
{
    // A whole type is written Type.*
    private static readonly Dictionary<string, string> Exempt = new()
    {
        ["Band.*"] = "in the unit of the figure it bounds",
        ["Budget.*"] = "in the unit of the figure it is about",
        ["Contribution.*"] = "in the unit of the figure it is about",
        ["Spread.*"] = "in the unit of the figure it is about",
        ["UncertainInput.*"] = "in the unit of the figure it is about",
        ["ToleranceDesign.*"] = "in the unit of the figure it belongs to",
        ["KeySpec.*"] = "in the unit that the key states",
        ["Mark.Value"] = "put into a sentence that names the unit",
        ["ChanceResult.*"] = "probabilities, and figures that carry their unit",
        ["MonteCarloResult.ChanceInBands"] = "a probability",
        ["ElasticRatios.*"] = "ratios",
        ["SectionForm.*"] = "coefficients of a form without size",
        ["SpeciesFigures.RadialShrinkage"] = "a fraction",
        ["SpeciesFigures.TangentialShrinkage"] = "a fraction",
        ["Timber.PoissonLong"] = "a ratio",
        ["Timber.PoissonAcross"] = "a ratio",
        ["DomeDesign.Fullness"] = "an exponent",
        ["LoadDesign.Creep"] = "a fraction",
        ["ChainFigures.Creep"] = "a fraction",
        ["SheetsDesign.PrintScaleX"] = "a ratio",
        ["SheetsDesign.PrintScaleY"] = "a ratio",
        ["InstrumentString.Inharmonicity"] = "the coefficient B, without unit",
        ["ActionSetup.DomePerHeight"] = "mm per mm",
        ["StockSheetDesign.Price"] = "in the currency that the stock states",
        ["StockHardwareDesign.Price"] = "in the currency that the stock states",
        ["HardwareRow.*"] = "prices in the currency that the stock states",
        ["StockCost.*"] = "prices in the currency that the stock states",
        ["SheetNest.PriceOfUsed"] = "in the currency that the stock states",
        ["SheetNest.UsedFraction"] = "a share",
        ["SheetNest.CutFraction"] = "a share",
        ["StockPlan.UsedFraction"] = "a share",
        ["StockPlan.CutFraction"] = "a share",
        ["GateFigure.*"] = "in the unit that it states",
    };

    [Theory]
    [InlineData("Design")]
    [InlineData("Instrument")]
    [InlineData("Jigs")]
    public void A_public_figure_carries_its_unit(string project)
    {
        string[] bare =
        [
            .. Sources
                .AssemblyOf(project)!
                .GetExportedTypes()
                .SelectMany(type =>
                    type.GetProperties(
                            BindingFlags.Public
                                | BindingFlags.Instance
                                | BindingFlags.Static
                                | BindingFlags.DeclaredOnly
                        )
                        .Where(property =>
                            IsFigure(property.PropertyType) && !Suffix().IsMatch(property.Name)
                        )
                        .Select(property => $"{type.Name}.{property.Name}")
                )
                .Where(name =>
                    !Exempt.ContainsKey(name) && !Exempt.ContainsKey(name.Split('.')[0] + ".*")
                ),
        ];
        Assert.True(bare.Length == 0, string.Join('\n', bare));
    }

    [Fact]
    public void Every_exemption_is_still_needed()
    {
        HashSet<string> names =
        [
            .. new[] { "Design", "Instrument", "Jigs" }
                .SelectMany(project => Sources.AssemblyOf(project)!.GetExportedTypes())
                .SelectMany(type =>
                    type.GetProperties()
                        .Select(property => $"{type.Name}.{property.Name}")
                        .Append($"{type.Name}.*")
                ),
        ];
        Assert.All(Exempt.Keys, name => Assert.Contains(name, names));
    }

    private static bool IsFigure(Type type) =>
        type == typeof(double)
        || type == typeof(double?)
        || typeof(IEnumerable<double>).IsAssignableFrom(type);

    [GeneratedRegex(
        "(?:L|Mm|Mm2|Mm3|Mm4|M|Kg|G|KgPerM[23]?|GPerM|N|Nmm2?|Nm|MPa|GPa|Pa|Rad|Deg|Hours|Hz|Db|Cents|Percent|S|C|(?:Factor|Share|Strain|Slope|Ratio)s?)$"
    )]
    private static partial Regex Suffix();
}

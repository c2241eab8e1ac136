using System.Reflection;
using System.Text.RegularExpressions;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>A public figure carries its unit in its name (house rule 6); what has no unit, or several, is listed here with the reason.</summary>
public sealed partial class UnitTests
{
    private static readonly Dictionary<string, string> Exempt = new() { };

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
                .Where(name => !Exempt.ContainsKey(name)),
        ];
        Assert.True(bare.Length == 0, string.Join('\n', bare));
    }

    private static bool IsFigure(Type type) =>
        type == typeof(double)
        || type == typeof(double?)
        || typeof(IEnumerable<double>).IsAssignableFrom(type);

    [GeneratedRegex(
        "(?:Mm|Mm2|Mm3|Mm4|PerMm|PerMm2|M|Kg|G|GPerM|KgPerM|KgPerM3|KgPerM2|N|NMm|NMm2|NPerMm|Nm|MPa|GPa|Pa|Rad|Deg|Hz|Cents|Percent|PerPercent|DegC|S)$"
    )]
    private static partial Regex Suffix();
}

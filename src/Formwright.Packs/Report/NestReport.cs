using System.ComponentModel;
using Formwright.Design.Reading;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>A sheet of stock with its parts. Sheet frame: origin at a corner, x along the length, which is the grain.</summary>
public sealed record NestReport(
    [property: Description("Its number.")] int Number,
    [property: Description("Material: plywood, template, cork, block.")] string Material,
    [property: Description("Nominal thickness, mm.")] double ThicknessMm,
    [property: Description("Length, mm.")] double LengthMm,
    [property: Description("Width, mm.")] double WidthMm,
    [property: Description("Price; absent where it is not known.")] double? Price,
    [property: Description("Length that is taken, mm.")] double UsedLengthMm,
    [property: Description("Share of the sheet that the parts take.")] double UsedFraction,
    [property: Description("Share of what is taken that the parts take.")] double CutFraction,
    [property: Description("What lies on it.")] IReadOnlyList<PlacedReport> Parts,
    [property: Description("Rectangles that are left and worth keeping.")]
        IReadOnlyList<OffcutReport> Offcuts
)
{
    internal static NestReport Of(SheetNest nest) =>
        new(
            nest.Number,
            Choices.NameOf(nest.Stock.Material),
            nest.Stock.ThicknessMm,
            nest.Stock.LengthMm,
            nest.Stock.WidthMm,
            nest.Stock.Price,
            nest.UsedLengthMm,
            nest.UsedFraction,
            nest.CutFraction,
            [.. nest.Parts.Select(PlacedReport.Of)],
            [.. nest.Offcuts.Select(OffcutReport.Of)]
        );
}

using System.ComponentModel;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>A part of the cut list.</summary>
public sealed record CutListReport(
    [property: Description("Its number.")] int Number,
    [property: Description("Id of the part.")] string Part,
    [property: Description("Its name in the language of the sheets.")] string Name,
    [property: Description("How many.")] int Quantity,
    [property: Description("Material: plywood, template, cork, block.")] string Material,
    [property: Description("Thickness, mm.")] double ThicknessMm,
    [property: Description("Longer side of the box around it, mm.")] double LengthMm,
    [property: Description("Shorter side, mm.")] double WidthMm,
    [property: Description(
        "Sheets that it lies on; fewer than its quantity where it found no place."
    )]
        IReadOnlyList<int> Sheets
)
{
    internal static CutListReport Of(CutListRow row) =>
        new(
            row.Number,
            row.Part.Id,
            row.Part.Name,
            row.Part.Quantity,
            row.Part.Material["material.".Length..],
            row.Part.ThicknessMm,
            row.LengthMm,
            row.WidthMm,
            row.Sheets
        );
}

using System.ComponentModel;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>What is left of a sheet.</summary>
public sealed record OffcutReport(
    [property: Description("Where it starts along the sheet, mm.")] double XMm,
    [property: Description("Where it starts across the sheet, mm.")] double YMm,
    [property: Description("Length, mm.")] double LengthMm,
    [property: Description("Width, mm.")] double WidthMm
)
{
    internal static OffcutReport Of(Offcut offcut) =>
        new(offcut.Box.Min.X, offcut.Box.Min.Y, offcut.LengthMm, offcut.WidthMm);
}

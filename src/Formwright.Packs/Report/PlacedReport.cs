using System.ComponentModel;
using Formwright.Jigs.Stock;

namespace Formwright.Packs.Report;

/// <summary>A part on a sheet.</summary>
public sealed record PlacedReport(
    [property: Description("Id of the part.")] string Part,
    [property: Description("Its number in the cut list.")] int Number,
    [property: Description("It lies face down: y of its frame is turned over first.")]
        bool IsTurnedOver,
    [property: Description("How far its frame is then turned, left positive, degrees.")]
        double AngleDeg,
    [property: Description("Where the origin of its frame then lies along the sheet, mm.")]
        double XMm,
    [property: Description("Where the origin of its frame then lies across the sheet, mm.")]
        double YMm
)
{
    internal static PlacedReport Of(PlacedPart placed) =>
        new(
            placed.Part.Id,
            placed.Number,
            placed.Part.IsTurnedOver,
            placed.AngleRad * 180 / Math.PI,
            placed.Shift.X,
            placed.Shift.Y
        );
}

using System.ComponentModel;
using Formwright.Trace;

namespace Formwright.Packs.Report;

/// <summary>A bump of a trace.</summary>
public sealed record BumpReport(
    [property: Description("bass or treble.")] string Side,
    [property: Description("Station from the heel, mm.")] double UMm,
    [property: Description("Arc length from the heel, mm.")] double ArcMm,
    [property: Description("Length along the outline, mm.")] double LengthMm,
    [property: Description("How far it stands away from the fair curve, mm.")] double HeightMm,
    [property: Description("Whether it stands out (true) or is hollow.")] bool IsProud,
    [property: Description("How far it turns the edge, 4 × height / length, degrees.")]
        double TurnDeg
)
{
    internal static BumpReport Of(Bump bump) =>
        new(
            SideOf(bump.Side),
            bump.UMm,
            bump.ArcMm,
            bump.LengthMm,
            bump.HeightMm,
            bump.IsProud,
            bump.TurnDeg
        );

    internal static string SideOf(TraceSide side) => side == TraceSide.Bass ? "bass" : "treble";
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[neck.stations]]</c>: the neck's section at a place between nut and join.</summary>
/// <param name="AtMm">Distance from the nut, mm.</param>
/// <param name="WidthMm">Width of neck and fingerboard there, mm.</param>
/// <param name="ThicknessMm">Thickness of the neck's wood without the fingerboard, mm.</param>
public sealed record NeckStationDesign(double AtMm, double WidthMm, double ThicknessMm)
{
    internal static NeckStationDesign Read(TableReader table) =>
        new(
            table.Length("at", null, 0, 700),
            table.Length("width", null, 20, 120),
            table.Length("thickness", null, 4, 80)
        );
}

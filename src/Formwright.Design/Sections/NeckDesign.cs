using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[neck]</c>: the neck as it meets board and fingerboard.</summary>
/// <param name="RampMm">How far the neck's face stands forward of the datum at the nut: the drop of the board's ramp, mm; 0 is the flat school.</param>
/// <param name="WidthNutMm">Width of the fingerboard at the nut, mm.</param>
/// <param name="WidthJoinMm">Width of the fingerboard at the join, mm.</param>
public sealed record NeckDesign(double RampMm, double WidthNutMm, double WidthJoinMm)
{
    internal static NeckDesign Read(TableReader table) =>
        new(
            table.Length("ramp", 0, -5, 15),
            table.Length("width_nut", 52, 20, 120),
            table.Length("width_join", 62, 20, 120)
        );
}

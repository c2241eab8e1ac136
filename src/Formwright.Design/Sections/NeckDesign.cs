using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[neck]</c>: the neck as it meets board and fingerboard, and what bends it. Its wood stands in <c>[wood.neck]</c>.</summary>
/// <param name="RampMm">How far the neck's face stands forward of the datum at the nut: the drop of the board's ramp, mm; 0 is the flat school.</param>
/// <param name="WidthNutMm">Width of the fingerboard at the nut, mm.</param>
/// <param name="WidthJoinMm">Width of the fingerboard at the join, mm.</param>
/// <param name="ThicknessNutMm">Thickness of the neck's wood at the nut, without the fingerboard, mm.</param>
/// <param name="ThicknessJoinMm">The same at the join, before the heel, mm.</param>
/// <param name="Stations">Sections between nut and join that replace the straight taper, in order of the file.</param>
/// <param name="Shape">Shape of the section.</param>
/// <param name="Bar">Reinforcement bar.</param>
/// <param name="OffBoardMm">How far the nut moves forward when the neck leaves the board, mm (negative: back).</param>
/// <param name="AfterGlueingMm">How far the nut moves forward after the fingerboard is glued, mm (moisture of the glue).</param>
public sealed record NeckDesign(
    double RampMm,
    double WidthNutMm,
    double WidthJoinMm,
    double ThicknessNutMm,
    double ThicknessJoinMm,
    IReadOnlyList<NeckStationDesign> Stations,
    NeckShape Shape,
    NeckBarDesign Bar,
    double OffBoardMm,
    double AfterGlueingMm
)
{
    internal static NeckDesign Read(TableReader table) =>
        new(
            table.Length("ramp", 0, -5, 15),
            table.Length("width_nut", 52, 20, 120),
            table.Length("width_join", 62, 20, 120),
            table.Length("thickness_nut", 15.5, 4, 80),
            table.Length("thickness_join", 17.5, 4, 80),
            [.. table.Tables("stations").Select(NeckStationDesign.Read)],
            table.Choice("shape", NeckShape.Round),
            NeckBarDesign.Read(table.Table("bar")),
            table.Length("off_board", 0, -5, 5),
            table.Length("after_glueing", 0, -5, 5)
        );
}

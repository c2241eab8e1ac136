using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[jig.bracket]</c>: a block glued from flat layers, six-sided as seen from above. It has a face at each end, so that it can be turned about;
/// its flanks leave the faces at the slopes and meet.
/// </summary>
/// <param name="BaseMm">From face to face along the bracket, mm.</param>
/// <param name="HeightMm">Height over the board, mm.</param>
/// <param name="FrontFaceMm">Width of the front face, mm.</param>
/// <param name="RearFaceMm">Width of the rear face, mm.</param>
/// <param name="FrontSlopeDeg">Angle in the wood between front face and flank, as seen from above, degrees.</param>
/// <param name="RearSlopeDeg">The same at the rear face.</param>
/// <param name="FrontAngleDeg">Angle in the wood between front face and foot, as seen from the side, degrees: 90 is square, more leans over the instrument.</param>
/// <param name="RearAngleDeg">The same at the rear face.</param>
/// <param name="BoltDiameterMm">Nominal diameter of the bolt, mm.</param>
/// <param name="BoltFromMm">Nearest place of the bolt's centre to the front face, at the foot, mm.</param>
/// <param name="BoltToMm">Farthest place of the bolt's centre from the front face, mm.</param>
/// <param name="SeatMm">Height at which washer and nut sit, mm; the layers above are opened for them.</param>
/// <param name="WasherDiameterMm">Diameter of the opening for washer and nut, mm.</param>
/// <param name="LayerMm">Thickness of a layer as measured, mm.</param>
/// <param name="NotchHeightMm">Height of the notch for the elastic over the board, mm.</param>
/// <param name="NotchDepthMm">Depth of the notch in both flanks, mm.</param>
/// <param name="NotchWidthMm">Width of the notch along the height, mm.</param>
/// <param name="ReliefDepthMm">Step at the foot of both faces that clears the soundboard's edge: its depth, mm.</param>
/// <param name="ReliefHeightMm">Height of that step, mm.</param>
public sealed record BracketDesign(
    double BaseMm,
    double HeightMm,
    double FrontFaceMm,
    double RearFaceMm,
    double FrontSlopeDeg,
    double RearSlopeDeg,
    double FrontAngleDeg,
    double RearAngleDeg,
    double BoltDiameterMm,
    double BoltFromMm,
    double BoltToMm,
    double SeatMm,
    double WasherDiameterMm,
    double LayerMm,
    double NotchHeightMm,
    double NotchDepthMm,
    double NotchWidthMm,
    double ReliefDepthMm,
    double ReliefHeightMm
)
{
    internal static BracketDesign Read(TableReader table)
    {
        BracketDesign bracket = new(
            table.Length("base", 75, 30, 200),
            table.Length("height", 85, 20, 200),
            table.Length("front_face", 20, 4, 100),
            table.Length("rear_face", 28, 4, 100),
            table.Number("front_slope", 105, 91, 150, "°"),
            table.Number("rear_slope", 97, 91, 150, "°"),
            table.Number("front_angle", 90, 75, 105, "°"),
            table.Number("rear_angle", 90, 75, 105, "°"),
            table.Length("bolt_diameter", 8, 4, 16),
            table.Length("bolt_from", 26, 5, 150),
            table.Length("bolt_to", 49, 5, 180),
            table.Length("seat", 36, 6, 180),
            table.Length("washer_diameter", 18, 6, 50),
            table.Length("layer", 17.6, 4, 100),
            table.Length("notch_height", 62, 10, 190),
            table.Length("notch_depth", 5, 1, 20),
            table.Length("notch_width", 8, 2, 30),
            table.Length("relief_depth", 5, 0, 20),
            table.Length("relief_height", 5, 0, 30)
        );
        table.InOrder("bolt_from", bracket.BoltFromMm, "bolt_to", bracket.BoltToMm);
        table.InOrder("bolt_to", bracket.BoltToMm, "base", bracket.BaseMm);
        table.InOrder("notch_height", bracket.NotchHeightMm, "height", bracket.HeightMm);
        table.InOrder("seat", bracket.SeatMm, "height", bracket.HeightMm);
        return bracket;
    }
}

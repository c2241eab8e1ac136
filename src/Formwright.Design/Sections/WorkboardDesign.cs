using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[workboard]</c>: the board that the instrument lies on, face down.</summary>
/// <param name="MarginMm">Board outside the outline all round, mm.</param>
/// <param name="ThicknessMm">Thickness of the board, mm.</param>
/// <param name="Relief">How it clears the dome.</param>
/// <param name="ClearanceMm">How much deeper than the dome the relief is at its deepest, mm.</param>
/// <param name="ContourStepMm">Step between drawn contours, mm.</param>
/// <param name="NeckWidthMm">Width of the neck part of the board, mm.</param>
/// <param name="BeyondNutMm">How far the board reaches past the nut, for the head, mm.</param>
/// <param name="JoinRadiusMm">Radius where the neck part runs into the body part, mm.</param>
/// <param name="RampToleranceMm">How far the ramp may be off at the nut before the board is seen to, mm.</param>
/// <param name="OverlayThicknessMm">Thickness of the overlay's sheet, mm; a carved board has none.</param>
/// <param name="SupportBlocks">Whether an overlay has fitted blocks under the harmonic bars.</param>
/// <param name="SpotStepMm">Step of the grid of holes that are drilled to the depth of the relief before it is carved, mm.</param>
/// <param name="SpotDiameterMm">Diameter of these holes, mm.</param>
/// <param name="Spine">The beam under the board.</param>
/// <param name="Feet">What the board stands on.</param>
public sealed record WorkboardDesign(
    double MarginMm,
    double ThicknessMm,
    ReliefMethod Relief,
    double ClearanceMm,
    double ContourStepMm,
    double NeckWidthMm,
    double BeyondNutMm,
    double JoinRadiusMm,
    double RampToleranceMm,
    double OverlayThicknessMm,
    bool SupportBlocks,
    double SpotStepMm,
    double SpotDiameterMm,
    SpineDesign Spine,
    FeetDesign Feet
)
{
    /// <summary>What an overlay puts on the board, mm; 0 for a carved one.</summary>
    public double PackedMm => Relief == ReliefMethod.Carved ? 0 : OverlayThicknessMm;

    internal static WorkboardDesign Read(TableReader table) =>
        new(
            table.Length("margin", 50, 5, 200),
            table.Length("thickness", 30, 6, 100),
            table.Choice("relief", ReliefMethod.Carved),
            table.Length("clearance", 0.3, 0, 5),
            table.Length("contour_step", 0.5, 0.05, 5),
            table.Length("neck_width", 110, 30, 300),
            table.Length("beyond_nut", 40, 0, 400),
            table.Length("join_radius", 40, 0, 200),
            table.Length("ramp_tolerance", 0.2, 0.02, 2),
            table.Length("overlay_thickness", 4, 1, 20),
            table.Flag("support_blocks", true),
            table.Length("spot_step", 30, 10, 100),
            table.Length("spot_diameter", 6, 1, 20),
            SpineDesign.Read(table.Table("spine")),
            FeetDesign.Read(table.Table("feet"))
        );
}

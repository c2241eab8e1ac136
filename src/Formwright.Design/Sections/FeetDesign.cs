using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary><c>[workboard.feet]</c>: the two feet that carry the board off the bench, and the clamp that must pass under the tail block.</summary>
/// <param name="LengthMm">A foot along the board, mm.</param>
/// <param name="WidthMm">A foot across the board, mm.</param>
/// <param name="ClampThroatMm">How far the clamp at the tail block reaches in from the board's end, mm.</param>
/// <param name="ClampDepthMm">Room that its lower jaw needs between bench and board, mm.</param>
public sealed record FeetDesign(
    double LengthMm,
    double WidthMm,
    double ClampThroatMm,
    double ClampDepthMm
)
{
    internal static FeetDesign Read(TableReader table) =>
        new(
            table.Length("length", 60, 10, 300),
            table.Length("width", 160, 20, 500),
            table.Length("clamp_throat", 120, 30, 400),
            table.Length("clamp_depth", 60, 10, 300)
        );
}

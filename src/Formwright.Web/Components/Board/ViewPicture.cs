namespace Formwright.Web.Components.Board;

/// <summary>A view of a sheet, drawn for the screen.</summary>
/// <param name="Name">What it shows; empty where that is written in it.</param>
/// <param name="Heights">How many times true its heights are.</param>
/// <param name="Svg">Inline SVG, without its closing tag, so that marks of the page can follow.</param>
/// <param name="Layers">What kinds of line and letter it has.</param>
/// <param name="Holes">Its holes, for a hand that points at them.</param>
internal sealed record ViewPicture(
    string Name,
    double Heights,
    string Svg,
    IReadOnlySet<string> Layers,
    IReadOnlyList<HoleTarget> Holes
)
{
    /// <summary>Its figures are inches; else mm.</summary>
    public bool IsInInches { get; init; }
}

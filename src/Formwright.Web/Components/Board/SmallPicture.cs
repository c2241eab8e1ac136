namespace Formwright.Web.Components.Board;

/// <summary>A view among others, small, without letters.</summary>
/// <param name="Svg">Inline SVG.</param>
/// <param name="IsWide">It is much wider than high.</param>
internal sealed record SmallPicture(string Svg, bool IsWide);

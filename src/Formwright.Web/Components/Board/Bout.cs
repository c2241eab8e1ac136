using Formwright.Design.Sections;

namespace Formwright.Web.Components.Board;

/// <summary>Upper bout, waist or lower bout as the page shows it.</summary>
/// <param name="Key">Its group in the design file: <c>outline.waist</c>.</param>
/// <param name="Id">Last part of it.</param>
/// <param name="Design">Its figures.</param>
internal sealed record Bout(string Key, string Id, BoutDesign Design)
{
    public string Name => WebWords.Of[$"outline.{Id}"];

    public bool IsHollow => Id == "waist";

    public static IReadOnlyList<Bout> Of(OutlineDesign outline) =>
        [
            new("outline.upper_bout", "upper_bout", outline.UpperBout),
            new("outline.waist", "waist", outline.Waist),
            new("outline.lower_bout", "lower_bout", outline.LowerBout),
        ];
}

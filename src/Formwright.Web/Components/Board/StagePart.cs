namespace Formwright.Web.Components.Board;

/// <summary>A part of a stage that is looked at by itself: the views of some sheets, and the figures beside them.</summary>
/// <param name="Id">Key of its name: <c>part.ribs</c>.</param>
/// <param name="Sheets">Ids of the sheets whose views are drawn.</param>
public sealed record StagePart(string Id, IReadOnlyList<string> Sheets);

namespace Formwright.Jigs.Mould;

/// <summary>A face of mould or board, and whether glue may come on it.</summary>
/// <param name="Key">Its name among the words: <c>face.layers</c>.</param>
/// <param name="IsGlued">Whether it is glued; if not, it must be kept free of glue.</param>
public sealed record GlueFace(string Key, bool IsGlued)
{
    /// <summary>Every face of a mould, glued ones first.</summary>
    public static IReadOnlyList<GlueFace> All { get; } =
    [
        new("layers", true),
        new("dowels-board", true),
        new("captive-nuts", true),
        new("bottom", false),
        new("inner", false),
        new("rebate", false),
        new("dowels-mould", false),
        new("ends", false),
    ];

    /// <summary>Its name in the reader's language.</summary>
    public string Name => JigsWords.Of[$"face.{Key}"];
}

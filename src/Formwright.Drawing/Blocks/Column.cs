namespace Formwright.Drawing;

/// <summary>A column of a <see cref="Table"/>.</summary>
/// <param name="Head">Its head; may be empty.</param>
/// <param name="Align">Figures right, texts left.</param>
/// <param name="WidthMm">Width; null takes that of its longest text.</param>
public sealed record Column(string Head, Align Align = Align.Left, double? WidthMm = null)
{
    /// <summary>Whether its texts stand out.</summary>
    public bool Strong { get; init; }
}

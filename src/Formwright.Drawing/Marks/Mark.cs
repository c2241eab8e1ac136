namespace Formwright.Drawing;

/// <summary>One thing that a writer puts on the sheet, in sheet mm, origin at the lower left corner of the paper, y upwards.</summary>
/// <param name="Level">What it lies over.</param>
/// <param name="Key">Name of the item it belongs to, where that has one.</param>
public abstract record Mark(Level Level, string? Key)
{
    /// <summary>Plain name of the layer it belongs to.</summary>
    public abstract string Layer { get; }
}

using System.Globalization;

namespace Formwright.Drawing;

/// <summary>Plain names of the layers of a cut file: the operation, and its depth where it does not go through.</summary>
public static class CutLayers
{
    /// <summary>outside-cut, inside-cut, pocket-2.5mm, drill, drill-12mm, engrave.</summary>
    public static string NameOf(CutOperation operation, double? depthMm = null)
    {
        string name = operation switch
        {
            CutOperation.OutsideCut => "outside-cut",
            CutOperation.InsideCut => "inside-cut",
            CutOperation.Pocket => "pocket",
            CutOperation.Drill => "drill",
            CutOperation.Engrave => "engrave",
            _ => throw new ArgumentOutOfRangeException(nameof(operation)),
        };
        return depthMm is { } depth
            ? string.Create(CultureInfo.InvariantCulture, $"{name}-{depth:0.###}mm")
            : name;
    }
}

using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>
/// Writes cut parts as DXF R2000 (AC1015) ASCII in mm: LWPOLYLINE with bulges, CIRCLE and TEXT, one layer per operation
/// and depth. The same part gives the same bytes; a closed contour is flagged closed and does not repeat its first vertex.
/// </summary>
public static class DxfWriter
{
    /// <summary>The part as the text of a DXF file.</summary>
    /// <exception cref="ArgumentException">The part holds nothing to cut, or a figure that is not finite.</exception>
    public static string Write(CutPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Contours.Count == 0 && part.Holes.Count == 0)
        {
            throw new ArgumentException($"Part {part.Id} holds nothing to cut.", nameof(part));
        }

        DxfText text = new();
        DxfFrame.Write(text, part.Bounds(), LayersOf(part), () => DxfEntities.Write(text, part));
        return text.ToString();
    }

    private static string[] LayersOf(CutPart part) =>
        [
            .. part
                .Contours.Select(c => (c.Operation, c.DepthMm))
                .Concat(part.Holes.Select(h => (CutOperation.Drill, h.DepthMm)))
                .Concat(part.Texts.Select(_ => (CutOperation.Engrave, (double?)null)))
                .Distinct()
                .Order()
                .Select(layer => CutLayers.NameOf(layer.Item1, layer.Item2))
                .Distinct(),
        ];
}

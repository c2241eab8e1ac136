namespace Formwright.Writers;

/// <summary>How a sheet is written as SVG.</summary>
public sealed record SvgOptions
{
    /// <summary>A file of its own: paper white, ink black, letters as outlines, so that nothing is lost elsewhere.</summary>
    public static SvgOptions File { get; } = new();

    /// <summary>
    /// For the page: no XML head, no ids, letters as text in the page's own face, colours as 'currentColor' and the
    /// custom properties --fw-second-ink, --fw-wood and --fw-paper, which fall back to those of the paper.
    /// </summary>
    public static SvgOptions Inline { get; } = new() { IsInline = true };

    public bool IsInline { get; private init; }
}

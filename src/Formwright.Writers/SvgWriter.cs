using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>Writes a sheet as SVG 1.1 in mm: one user unit is one mm, arcs stay arcs, one class per layer, no scripts.</summary>
public static class SvgWriter
{
    /// <summary>The sheet as SVG; the same sheet gives the same text.</summary>
    public static string Write(DrawnSheet drawn, SvgOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        Paper paper = drawn.Sheet.Paper;
        return Write(
            drawn.Marks,
            Box.Of(0, 0, paper.WidthMm, paper.HeightMm),
            drawn.Sheet.Title.Title,
            options
        );
    }

    /// <summary>Some marks as SVG, such as those of one view: <paramref name="window"/> is what is seen of them, in sheet mm.</summary>
    public static string Write(
        IReadOnlyList<Mark> marks,
        Box window,
        string title,
        SvgOptions? options = null
    )
    {
        ArgumentNullException.ThrowIfNull(marks);
        SvgPen pen = new(window, options ?? SvgOptions.File);
        foreach (Mark mark in marks)
        {
            pen.Draw(mark);
        }

        return pen.Finish(title);
    }
}

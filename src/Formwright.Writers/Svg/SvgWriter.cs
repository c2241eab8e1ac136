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

    /// <summary>A part to cut as SVG: hairlines in part mm with a margin of 5 mm, one class per layer named as in its DXF file.</summary>
    public static string Write(CutPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        List<Mark> marks = [];
        foreach (CutContour contour in part.Contours)
        {
            marks.Add(Hairline(contour.Shape, contour.Operation, contour.DepthMm));
        }

        foreach (CutHole hole in part.Holes)
        {
            Shape circle = Shape.Circle(hole.Centre, hole.DiameterMm / 2);
            marks.Add(Hairline(circle, CutOperation.Drill, hole.DepthMm));
        }

        foreach (CutText text in part.Texts)
        {
            string layer = CutLayers.NameOf(CutOperation.Engrave);
            TextStyle style = new(layer, text.HeightMm, Weight.Regular);
            double angle = text.Degrees * Math.PI / 180;
            marks.Add(new TextMark(text.Text, text.At, angle, style, Level.Over, part.Id));
        }

        return Write(marks, part.Bounds().Grown(5), part.Id);

        StrokeMark Hairline(Shape shape, CutOperation operation, double? depthMm) =>
            new(
                shape,
                new LineStyle(CutLayers.NameOf(operation, depthMm), 0.1, Tone.Ink, []),
                Level.Line,
                part.Id
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

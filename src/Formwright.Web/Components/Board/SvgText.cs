using Microsoft.AspNetCore.Components.Rendering;
using static Formwright.Web.Components.Board.OutlineDrawing;

namespace Formwright.Web.Components.Board;

/// <summary>Writes letters and lines of a drawing that is made by a loop. Elements are keyed by their order.</summary>
internal sealed class SvgText(RenderTreeBuilder builder)
{
    public void Write(string style, double x, double y, string text, string anchor = "start")
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", style);
        builder.AddAttribute(2, "x", N(x));
        builder.AddAttribute(3, "y", N(y));
        builder.AddAttribute(4, "text-anchor", anchor);
        builder.AddContent(5, text);
        builder.CloseElement();
    }

    /// <summary>Letters turned about their first one, clockwise.</summary>
    public void Turned(string style, double x, double y, double degrees, string text)
    {
        builder.OpenElement(20, "text");
        builder.AddAttribute(21, "class", style);
        builder.AddAttribute(22, "transform", $"translate({N(x)} {N(y)}) rotate({N(degrees)})");
        builder.AddContent(23, text);
        builder.CloseElement();
    }

    public void Path(string style, string path)
    {
        builder.OpenElement(10, "path");
        builder.AddAttribute(11, "class", style);
        builder.AddAttribute(12, "d", path);
        builder.CloseElement();
    }
}

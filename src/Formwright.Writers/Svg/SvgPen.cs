using System.Globalization;
using System.Security;
using System.Text;
using Formwright.Curves;
using Formwright.Drawing;

namespace Formwright.Writers;

/// <summary>Collects SVG elements; marks of one style that follow each other share one path.</summary>
internal sealed class SvgPen(Box window, SvgOptions options)
{
    private readonly StringBuilder body = new();
    private readonly StringBuilder path = new();
    private readonly SortedSet<(Weight, char)> letters = [];
    private string open = "";

    public void Draw(Mark mark)
    {
        switch (mark)
        {
            case StrokeMark stroke:
                Continue(StrokeHead(stroke));
                SvgPath.Append(path, stroke.Shape, window);
                break;
            case FillMark fill:
                Continue(FillHead(fill));
                foreach (Shape loop in fill.Loops)
                {
                    SvgPath.Append(path, loop, window);
                }

                // Two fills that overlap must not cancel each other.
                Continue("");
                break;
            case TextMark text:
                Continue("");
                Letter(text);
                break;
        }
    }

    public string Finish(string title)
    {
        Continue("");
        StringBuilder svg = new();
        if (!options.IsInline)
        {
            svg.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        }

        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
            .AppendMm(window.WidthMm)
            .Append("mm\" height=\"")
            .AppendMm(window.HeightMm)
            .Append("mm\" viewBox=\"0 0 ")
            .AppendMm(window.WidthMm)
            .Append(' ')
            .AppendMm(window.HeightMm)
            .Append(options.IsInline ? "\" role=\"img\">\n" : "\" color=\"#000\">\n")
            .Append("<title>")
            .Append(Escape(title))
            .Append("</title>\n");
        if (!options.IsInline)
        {
            AppendLetters(svg);
            svg.Append("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        }

        return svg.Append(body).Append("</svg>\n").ToString();
    }

    private void AppendLetters(StringBuilder svg)
    {
        if (letters.Count == 0)
        {
            return;
        }

        svg.Append("<defs>\n");
        foreach ((Weight weight, char c) in letters)
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path id=\"{Id(weight, c)}\" d=\"{GlyphOutlines.Of(weight, c)}\"/>\n"
            );
        }

        svg.Append("</defs>\n");
    }

    /// <summary>Goes on with the path whose element starts so, or ends it and starts another.</summary>
    private void Continue(string head)
    {
        if (head == open)
        {
            return;
        }

        if (open.Length > 0)
        {
            body.Append(open).Append(" d=\"").Append(path).Append("\"/>\n");
        }

        path.Clear();
        open = head;
    }

    private string StrokeHead(StrokeMark stroke)
    {
        LineStyle style = stroke.Style;
        StringBuilder head = new();
        head.Append(
            CultureInfo.InvariantCulture,
            $"<path class=\"fw-{style.Layer.Replace('.', '_')}\""
        );
        AppendKey(head, stroke.Key);
        head.Append(" fill=\"none\" stroke=\"")
            .Append(Colour(style.Tone))
            .Append("\" stroke-width=\"")
            .AppendMm(style.WidthMm)
            .Append("\" stroke-linejoin=\"round\"");
        if (style.Dash.Count == 0)
        {
            return head.Append(" stroke-linecap=\"round\"").ToString();
        }

        head.Append(" stroke-dasharray=\"");
        for (int i = 0; i < style.Dash.Count; i++)
        {
            head.Append(i > 0 ? " " : "").AppendMm(style.Dash[i]);
        }

        return head.Append('"').ToString();
    }

    private string FillHead(FillMark fill)
    {
        StringBuilder head = new();
        head.Append(CultureInfo.InvariantCulture, $"<path class=\"fw-{fill.Layer}\"");
        AppendKey(head, fill.Key);
        return head.Append(" fill=\"")
            .Append(Colour(fill.Tone))
            .Append("\" fill-rule=\"evenodd\"")
            .ToString();
    }

    private static void AppendKey(StringBuilder head, string? key)
    {
        if (key is not null)
        {
            head.Append(" data-key=\"").Append(Escape(key)).Append('"');
        }
    }

    private void Letter(TextMark text)
    {
        TextStyle style = text.Style;
        double x = text.Start.X - window.LeftMm;
        double y = window.TopMm - text.Start.Y;
        double degrees = -text.AngleRad * 180 / Math.PI;
        double em = Typeface.Of(style.Weight).EmMm(style.HeightMm);
        body.Append(
            CultureInfo.InvariantCulture,
            $"<{(options.IsInline ? "text" : "g")} class=\"fw-{style.Layer.Replace('.', '_')}\""
        );
        AppendKey(body, text.Key);
        body.Append(" fill=\"").Append(Colour(style.Tone)).Append('"');
        body.Append(" transform=\"translate(").AppendMm(x).Append(' ').AppendMm(y).Append(')');
        if (text.AngleRad != 0)
        {
            body.Append(" rotate(").AppendMm(degrees).Append(')');
        }

        if (options.IsInline)
        {
            int weight =
                style.Weight == Weight.Regular ? 400
                : style.Weight == Weight.Medium ? 500
                : 600;
            body.Append("\" font-size=\"")
                .AppendMm(em)
                .Append("\" font-weight=\"")
                .Append(weight.ToString(CultureInfo.InvariantCulture))
                .Append("\" font-family=\"Barlow Semi Condensed, sans-serif\" textLength=\"")
                .AppendMm(text.WidthMm)
                .Append("\">")
                .Append(Escape(text.Text))
                .Append("</text>\n");
            return;
        }

        body.Append(
            CultureInfo.InvariantCulture,
            $" scale({em / GlyphOutlines.Em:0.#######})\" aria-label=\"{Escape(text.Text)}\">"
        );
        double advance = 0;
        foreach (char c in text.Text)
        {
            if (GlyphOutlines.Of(style.Weight, c).Length > 0)
            {
                letters.Add((style.Weight, c));
                body.Append(
                    CultureInfo.InvariantCulture,
                    $"<use href=\"#{Id(style.Weight, c)}\" x=\"{advance:0.##}\"/>"
                );
            }

            advance += style.WidthMm(c.ToString()) / em * GlyphOutlines.Em;
        }

        body.Append("</g>\n");
    }

    private static string Id(Weight weight, char c) =>
        string.Create(CultureInfo.InvariantCulture, $"{weight}{(int)c}");

    private string Colour(Tone tone)
    {
        byte grey = Palette.Grey(tone);
        string colour = string.Create(
            CultureInfo.InvariantCulture,
            $"#{grey:x2}{grey:x2}{grey:x2}"
        );
        return tone switch
        {
            Tone.Ink => "currentColor",
            Tone.SecondInk when options.IsInline => $"var(--fw-second-ink, {colour})",
            Tone.Wood when options.IsInline => $"var(--fw-wood, {colour})",
            Tone.Paper when options.IsInline => $"var(--fw-paper, {colour})",
            _ => colour,
        };
    }

    private static string Escape(string text) => SecurityElement.Escape(text);
}

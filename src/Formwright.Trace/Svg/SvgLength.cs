using Formwright.Design;

namespace Formwright.Trace.Svg;

/// <summary>A length of an SVG attribute: a number and perhaps a unit.</summary>
internal readonly record struct SvgLength(double Value, string Unit)
{
    /// <summary>CSS Values and Units 3, section 6.2: one inch is 96 px.</summary>
    internal const double MmPerPx = Lengths.MmPerInch / 96;

    /// <summary>Whether the unit is one of the paper, not of the screen.</summary>
    internal bool IsReal => Unit is "mm" or "cm" or "in" or "pt" or "pc" or "Q";

    internal bool IsShare => Unit == "%";

    /// <summary>The length in px; a share of <paramref name="whole"/> where it is a percentage.</summary>
    internal double Px(double whole) =>
        Unit switch
        {
            "mm" => Value / MmPerPx,
            "cm" => Value * 10 / MmPerPx,
            "Q" => Value / 4 / MmPerPx,
            "in" => Value * 96,
            "pt" => Value * 96 / 72,
            "pc" => Value * 16,
            // Relative to a font, which an outline has no use for: the usual size.
            "em" => Value * 16,
            "ex" => Value * 8,
            "%" => Value / 100 * whole,
            _ => Value,
        };

    /// <summary>Reads a length; null when it is none.</summary>
    internal static SvgLength? Read(string? text)
    {
        if (text is null)
        {
            return null;
        }

        SvgNumbers at = new(text);
        if (!at.TryNumber(out double value))
        {
            return null;
        }

        ReadOnlySpan<char> rest = text.AsSpan(at.At).Trim();
        return rest is "" or "px" ? new SvgLength(value, "px")
            : rest is "mm" or "cm" or "in" or "pt" or "pc" or "Q" or "em" or "ex" or "%"
                ? new SvgLength(value, rest.ToString())
            : null;
    }
}

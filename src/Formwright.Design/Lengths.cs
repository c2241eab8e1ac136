using System.Globalization;
using System.Text.RegularExpressions;

namespace Formwright.Design;

/// <summary>
/// Lengths as people write them: <c>12.5</c>, <c>12,5 mm</c>, <c>1.2 cm</c>, <c>3/4 in</c>, <c>1 3/4"</c>, <c>1-3/4 in</c>, <c>1½ in</c>.
/// A comma is always a decimal comma (12,5 is 12.5, never 125); thousands marks are refused,
/// and so are line ends.
/// </summary>
public static partial class Lengths
{
    /// <summary>Millimetres in an inch, exact (international inch, 1959).</summary>
    public const double MmPerInch = 25.4;

    /// <summary>The units that are understood, for messages.</summary>
    public const string KnownUnits = "mm, cm, m, in, ft";

    /// <summary>Characters in a length at most.</summary>
    private const int Longest = 64;

    private static readonly Dictionary<string, double> MmPerUnit = new(
        StringComparer.OrdinalIgnoreCase
    )
    {
        ["mm"] = 1,
        ["cm"] = 10,
        ["m"] = 1000,
        ["in"] = MmPerInch,
        ["inch"] = MmPerInch,
        ["inches"] = MmPerInch,
        ["\""] = MmPerInch,
        ["″"] = MmPerInch,
        ["”"] = MmPerInch,
        ["ft"] = 12 * MmPerInch,
        ["pulg"] = MmPerInch,
        ["pulgada"] = MmPerInch,
        ["pulgadas"] = MmPerInch,
    };

    // Fractions that stand as one character (Unicode, "Number Forms" and Latin-1): ¼ ½ ¾ ⅓ ⅔ ⅛ ⅜ ⅝ ⅞.
    private static readonly Dictionary<char, string> OneCharacter = new()
    {
        ['¼'] = "1/4",
        ['½'] = "1/2",
        ['¾'] = "3/4",
        ['⅓'] = "1/3",
        ['⅔'] = "2/3",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
    };

    /// <summary>Reads a length.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="mm">The length in mm; NaN when it can't be read.</param>
    /// <param name="mmPerBareUnit">What one means when no unit is written: 1 for mm, 25.4 for a page set to inches.</param>
    /// <returns>Why it can't be read, or <see cref="LengthFault.None"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mmPerBareUnit"/> is no positive number.</exception>
    public static LengthFault Read(string text, out double mm, double mmPerBareUnit = 1)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!double.IsFinite(mmPerBareUnit) || mmPerBareUnit <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(mmPerBareUnit));
        }

        mm = double.NaN;
        if (text.Length > Longest || text.Any(c => char.IsControl(c) && c != '\t'))
        {
            return LengthFault.NotANumber;
        }

        Match match = Pattern().Match(Spread(text));
        if (!match.Success)
        {
            return LengthFault.NotANumber;
        }

        string unit = match.Groups["unit"].Value;
        double scale = mmPerBareUnit;
        if (unit.Length > 0 && !MmPerUnit.TryGetValue(unit, out scale))
        {
            return LengthFault.UnknownUnit;
        }

        double value = 0;
        if (match.Groups["number"] is { Success: true } number)
        {
            value = Number(number);
        }

        if (match.Groups["top"] is { Success: true } top)
        {
            double bottom = Number(match.Groups["bottom"]);
            if (bottom == 0)
            {
                return LengthFault.NotANumber;
            }

            value += Number(top) / bottom;
        }

        mm = (match.Groups["sign"].Value is "-" or "−" ? -value : value) * scale;
        return LengthFault.None;
    }

    private static double Number(Group digits) =>
        double.Parse(digits.Value.Replace(',', '.'), CultureInfo.InvariantCulture);

    // 1½ is 1 1/2.
    private static string Spread(string text) =>
        text.AsSpan().IndexOfAny(OneCharacterFractions) < 0
            ? text
            : string.Concat(
                text.Select(c =>
                    OneCharacter.TryGetValue(c, out string? spread) ? $" {spread} " : $"{c}"
                )
            );

    private static readonly System.Buffers.SearchValues<char> OneCharacterFractions =
        System.Buffers.SearchValues.Create([.. OneCharacter.Keys]);

    // A sign, then a whole number and a fraction, or a fraction, or a decimal number; then a unit. Finite for any 64 characters.
    [GeneratedRegex(
        """^\s*(?<sign>[-+−]?)\s*(?:(?<number>[0-9]+)(?:\s+|-|\s*\+\s*)(?<top>[0-9]+)\s*[/⁄]\s*(?<bottom>[0-9]+)|(?<top>[0-9]+)\s*[/⁄]\s*(?<bottom>[0-9]+)|(?<number>[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+))\s*(?<unit>\p{L}+|["″”])?\.?\s*\z""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Pattern();
}

using System.Globalization;
using System.Text.RegularExpressions;

namespace Formwright.Design;

/// <summary>
/// Lengths as people write them: <c>12.5</c>, <c>12,5 mm</c>, <c>1.2 cm</c>, <c>3/4 in</c>, <c>1 3/4"</c>, <c>1-3/4 in</c>.
/// A comma is always a decimal comma (12,5 is 12.5, never 125); thousands marks are refused.
/// </summary>
public static partial class Lengths
{
    /// <summary>Millimetres in an inch, exact (international inch, 1959).</summary>
    public const double MmPerInch = 25.4;

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
        ["ft"] = 12 * MmPerInch,
        ["pulg"] = MmPerInch,
    };

    /// <summary>The units that are understood, for messages.</summary>
    public const string KnownUnits = "mm, cm, m, in, ft";

    /// <summary>Reads a length.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="mm">The length in mm.</param>
    /// <param name="mmPerBareUnit">What one means when no unit is written: 1 for mm, 25.4 for a page set to inches.</param>
    /// <returns>Why it can't be read, or <see cref="LengthFault.None"/>.</returns>
    public static LengthFault Read(string text, out double mm, double mmPerBareUnit = 1)
    {
        ArgumentNullException.ThrowIfNull(text);
        mm = double.NaN;
        if (text.Length > 64)
        {
            return LengthFault.NotANumber;
        }

        Match match = Pattern().Match(text);
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
        if (match.Groups["number"].Success)
        {
            value = double.Parse(
                match.Groups["number"].Value.Replace(',', '.'),
                CultureInfo.InvariantCulture
            );
        }

        if (match.Groups["top"].Success)
        {
            double bottom = double.Parse(
                match.Groups["bottom"].Value,
                CultureInfo.InvariantCulture
            );
            if (bottom == 0)
            {
                return LengthFault.NotANumber;
            }

            value += double.Parse(match.Groups["top"].Value, CultureInfo.InvariantCulture) / bottom;
        }

        value *= scale;
        if (!double.IsFinite(value))
        {
            return LengthFault.NotANumber;
        }

        mm = match.Groups["sign"].Value is "-" or "−" ? -value : value;
        return LengthFault.None;
    }

    // sign, then a decimal number, or a fraction, or a whole number and a fraction; then a unit.
    [GeneratedRegex(
        """^\s*(?<sign>[-+−]?)\s*(?:(?<number>\d+)(?:\s+|\s*[-+]\s*)(?<top>\d+)\s*[/⁄]\s*(?<bottom>\d+)|(?<top>\d+)\s*[/⁄]\s*(?<bottom>\d+)|(?<number>\d+(?:[.,]\d*)?|[.,]\d+))\s*(?<unit>\p{L}+|"|″)?\.?\s*$""",
        RegexOptions.CultureInvariant | RegexOptions.NonBacktracking
    )]
    private static partial Regex Pattern();
}

using System.Globalization;
using System.Text.RegularExpressions;

namespace Formwright.Web.Reading;

/// <summary>
/// Sentences of the engine in the reader's unit. They are written in mm, in whatever project they come from; for a reader of inches each length
/// of theirs is written as inches, with two decimals more, so that nothing that can be measured is lost.
/// </summary>
public static partial class SaidLengths
{
    /// <summary>The sentence with its lengths in the reader's unit; as it is for a reader of mm.</summary>
    /// <param name="text">A sentence in the reader's language and figures.</param>
    /// <param name="reader">Who reads it.</param>
    public static string Of(string text, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(reader);
        return reader.Inches
            ? Lengths()
                .Replace(text, said => Figure().Replace(said.Value[..^2], InInches) + reader.Unit)
            : text;

        string InInches(Match figure)
        {
            string digits = figure.Value.Replace(',', '.');
            int decimals = digits.Length - 1 - digits.IndexOf('.', StringComparison.Ordinal);
            return reader.Figure(
                double.Parse(digits, CultureInfo.InvariantCulture),
                decimals == digits.Length ? 0 : decimals
            );
        }
    }

    // Figures that share one unit are parted by one word or sign: 2.40 ± 0.20 mm, 645 × 80 mm, 8 to 12 mm.
    [GeneratedRegex(
        @"(?<![\w.,])\d+(?:[.,]\d+)?(?:\s?(?:±|×|–|\+|to|and|or|a|y|o)\s?[−+-]?\d+(?:[.,]\d+)?)*[\s\u00a0\u202f]mm(?![\w²³⁴/])"
    )]
    private static partial Regex Lengths();

    [GeneratedRegex(@"\d+(?:[.,]\d+)?")]
    private static partial Regex Figure();
}

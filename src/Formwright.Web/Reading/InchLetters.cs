using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Design;
using Formwright.Drawing;

namespace Formwright.Web.Reading;

/// <summary>Views of the sheets for a reader of inches: every length has the inch mark, so that none can be taken for mm.</summary>
internal static partial class InchLetters
{
    private const string Mark = "″";

    /// <summary>Letters views in inches until it is disposed; null for a reader of mm.</summary>
    public static LetteredLengths? For(Reader reader) =>
        reader.Inches
            ? new LetteredLengths(
                (mm, decimals) => Written(mm, decimals, reader),
                (text, isDimension) => Of(text, reader, isDimension)
            )
            : null;

    /// <summary>What is lettered on a view, or its name, for a reader.</summary>
    /// <param name="text">A text in mm. A bare number with decimals is a length, one without is a count, but in a dimension.</param>
    /// <param name="reader">Who reads it.</param>
    /// <param name="isDimension">Whether it stands for the figure of a dimension.</param>
    public static string Of(string text, Reader reader, bool isDimension = false)
    {
        if (!reader.Inches)
        {
            return text;
        }

        string said = SaidLengths.Of(text, reader);
        said = Sizes().Replace(said, size => Whole().Replace(size.Value, Inches));
        said = Radii().Replace(said, Inches);
        return isDimension ? AnyFigure().Replace(said, Inches)
            : Bare().Match(said) is { Success: true } figure && figure.Length == said.Length
                ? Short(Inches(figure))
            : Bare().Replace(said, Inches);

        // Depths stand close together on a board, and inches need more digits than mm: no 0 before the point, as is the custom.
        string Short(string written) =>
            written.Length > 2 && written[0] == '0' && written[1] is '.' or ','
                ? written[1..]
                : written;

        string Inches(Match figure)
        {
            string digits = figure.Value.Replace(',', '.');
            int point = digits.IndexOf('.', StringComparison.Ordinal);
            double mm = double.Parse(digits, CultureInfo.InvariantCulture);
            return Written(mm, point < 0 ? 0 : digits.Length - 1 - point, reader, isWhole: true);
        }
    }

    // A figure of a dimension has no more decimals than it needs; what was written with its decimals keeps them.
    private static string Written(double mm, int decimals, Reader reader, bool isWhole = false) =>
        (mm < 0 ? "−" : "")
        + Math.Round(Math.Abs(mm) / Lengths.MmPerInch, decimals + 2, MidpointRounding.AwayFromZero)
            .ToString(
                isWhole ? $"F{decimals + 2}" : "0." + new string('#', decimals + 2),
                reader.Culture
            )
        + Mark;

    // 2500 × 1250
    [GeneratedRegex(@"(?<![\w.,])\d+(?:[.,]\d+)?(?: × \d+(?:[.,]\d+)?)+(?![\w″]| in\b)")]
    private static partial Regex Sizes();

    [GeneratedRegex(@"\d+(?:[.,]\d+)?")]
    private static partial Regex Whole();

    // R 69
    [GeneratedRegex(@"(?<=\bR )\d+(?:[.,]\d+)?(?![\d\w″]|[.,]\d)")]
    private static partial Regex Radii();

    // What has another unit, or inches already, stays.
    [GeneratedRegex(@"(?<![\w.,])\d+[.,]\d+(?![\d\w″.,]|\s?(?:°|%|N\b|Hz\b|g\b|kg\b|in\b))")]
    private static partial Regex Bare();

    [GeneratedRegex(
        @"(?<![\w.,])\d+(?:[.,]\d+)?(?![\d\w″]|[.,]\d|\s?(?:°|%|N\b|Hz\b|g\b|kg\b|in\b))"
    )]
    private static partial Regex AnyFigure();
}

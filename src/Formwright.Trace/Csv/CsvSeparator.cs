using System.Globalization;
using Formwright.Trace.Files;

namespace Formwright.Trace.Csv;

/// <summary>What parts the columns of a table, and whether a comma in it is a decimal comma.</summary>
internal sealed record CsvSeparator(char Mark, bool HasDecimalComma)
{
    internal const int MaxCells = 16;

    /// <summary>Decides by the first lines that hold figures.</summary>
    /// <exception cref="TraceFault">Commas could be both.</exception>
    internal static CsvSeparator Of(string[] lines, string file)
    {
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i].Trim();
            if (
                line.Length == 0
                || line[0] == '#'
                || !line.Any(char.IsAsciiDigit)
                || line.Any(IsWord)
            )
            {
                continue;
            }

            if (line.Contains(';'))
            {
                return new CsvSeparator(';', true);
            }

            if (line.Contains('\t'))
            {
                return new CsvSeparator('\t', true);
            }

            int commas = line.Count(each => each == ',');
            bool hasSpaces = line.Replace(", ", ",", StringComparison.Ordinal).Contains(' ');
            if (hasSpaces || commas == 0)
            {
                return new CsvSeparator(' ', true);
            }

            // Only commas: with a point in the line, or one or two commas, they part columns.
            return line.Contains('.') || commas <= 2
                ? new CsvSeparator(',', false)
                : throw new TraceFault(file, i + 1, 1, "fault.csv-commas");
        }

        return new CsvSeparator(',', false);
    }

    /// <summary>The cells of a line.</summary>
    internal int Split(string line, Span<Range> cells)
    {
        ReadOnlySpan<char> text = line.AsSpan().TrimEnd();
        if (Mark != ' ')
        {
            int found = text.Split(cells, Mark);
            // A mark at the end of the line opens no cell.
            return found > 1 && text[cells[found - 1]].IsWhiteSpace() ? found - 1 : found;
        }

        int count = 0;
        int i = 0;
        while (i < text.Length && count < cells.Length)
        {
            if (text[i] is ' ' or '\t')
            {
                i++;
                continue;
            }

            int from = i;
            while (i < text.Length && text[i] is not (' ' or '\t'))
            {
                i++;
            }

            cells[count++] = from..i;
        }

        return count;
    }

    internal bool TryNumber(ReadOnlySpan<char> cell, out double value)
    {
        value = double.NaN;
        if (cell.IsEmpty || cell.Length > 40)
        {
            return false;
        }

        Span<char> plain = stackalloc char[cell.Length];
        cell.CopyTo(plain);
        if (HasDecimalComma)
        {
            if (plain.Contains('.') && plain.Contains(','))
            {
                // Thousands marks are refused.
                return false;
            }

            plain.Replace(',', '.');
        }

        return double.TryParse(
                plain,
                NumberStyles.AllowLeadingSign
                    | NumberStyles.AllowDecimalPoint
                    | NumberStyles.AllowExponent,
                CultureInfo.InvariantCulture,
                out value
            ) && double.IsFinite(value);
    }

    /// <summary>A letter that is no exponent's.</summary>
    private static bool IsWord(char each) => char.IsLetter(each) && each is not ('e' or 'E');
}

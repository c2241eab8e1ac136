namespace Formwright.Trace.Csv;

/// <summary>The first line of a table, where it has words: what the columns are, and perhaps their unit.</summary>
internal sealed record CsvHeader(CsvColumns Columns, double? MmPerUnit)
{
    private static readonly string[] StationWords =
    [
        "station",
        "at",
        "u",
        "estacion",
        "estación",
        "posicion",
        "posición",
    ];
    private static readonly string[] HalfWords = ["half", "semiancho", "medio", "semi"];
    private static readonly string[] WidthWords = ["width", "ancho"];

    /// <summary>Reads a header; null when the line starts with a figure.</summary>
    internal static CsvHeader? Read(string line, CsvSeparator separator)
    {
        Span<Range> cells = stackalloc Range[CsvSeparator.MaxCells];
        int count = separator.Split(line, cells);
        if (count == 0 || separator.TryNumber(line.AsSpan(cells[0]).Trim().Trim('"').Trim(), out _))
        {
            return null;
        }

        if (!line.Any(char.IsLetter))
        {
            return null;
        }

        string[] words = new string[count];
        for (int i = 0; i < count; i++)
        {
            words[i] = line[cells[i]].Trim().Trim('"').ToLowerInvariant();
        }

        double? unit = words.Select(UnitOf).FirstOrDefault(found => found is not null);
        return new CsvHeader(ColumnsOf(words), unit);
    }

    private static CsvColumns ColumnsOf(string[] words)
    {
        if (words[0].StartsWith('x'))
        {
            return CsvColumns.Points;
        }

        if (!StationWords.Any(word => Begins(words[0], word)))
        {
            return CsvColumns.Unknown;
        }

        if (words.Length >= 3)
        {
            return CsvColumns.BothHalfWidths;
        }

        bool isHalf = words.Length > 1 && HalfWords.Any(words[1].Contains);
        bool isWidth = words.Length > 1 && WidthWords.Any(words[1].Contains);
        return isWidth && !isHalf ? CsvColumns.Widths : CsvColumns.HalfWidths;
    }

    private static bool Begins(string cell, string word) =>
        cell.StartsWith(word, StringComparison.Ordinal)
        && (cell.Length == word.Length || !char.IsLetter(cell[word.Length]));

    /// <summary>A unit at the end of a heading: <c>x_mm</c>, <c>width (in)</c>.</summary>
    private static double? UnitOf(string cell)
    {
        int start = cell.LastIndexOfAny(['_', '(', '[', ' ']);
        string last = cell[(start + 1)..].Trim(')', ']', ' ');
        return start < 0
            ? null
            : last switch
            {
                "mm" => 1,
                "cm" => 10,
                "m" => 1000,
                "in" or "inch" or "pulg" => Design.Lengths.MmPerInch,
                _ => null,
            };
    }
}

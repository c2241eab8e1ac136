namespace Formwright.Trace.Csv;

/// <summary>What the columns of a table hold.</summary>
internal enum CsvColumns
{
    Unknown,
    Points,
    HalfWidths,
    Widths,
    BothHalfWidths,
}

namespace Formwright.Trace.Csv;

/// <summary>The first three figures of a line.</summary>
internal readonly record struct CsvRow(double A, double B, double C, int Line);

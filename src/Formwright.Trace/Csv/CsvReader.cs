using Formwright.Curves;
using Formwright.Trace.Files;
using Formwright.Trace.Geometry;

namespace Formwright.Trace.Csv;

/// <summary>
/// Reads tables of measured places: stations and half widths (or widths, or the half widths of both sides), or points x, y.
/// Columns are parted by <c>;</c>, tab, comma or spaces; a comma is a decimal comma wherever something else parts the columns.
/// Lines that start with <c>#</c> are remarks; an empty line ends a curve and starts the next.
/// </summary>
internal sealed class CsvReader
{
    private readonly string file;
    private readonly string[] lines;
    private readonly CsvSeparator separator;
    private readonly CurveSink sink;
    private CsvHeader header = new(CsvColumns.Unknown, null);
    private int count;

    private CsvReader(string file, string text)
    {
        this.file = file;
        lines = text.Split(text.Contains('\n') ? '\n' : '\r');
        separator = CsvSeparator.Of(lines, file);
        sink = new CurveSink(file);
    }

    internal static TraceFile Read(ReadOnlyMemory<byte> bytes, string file)
    {
        ReadOnlySpan<byte> all = bytes.Span;
        if (all.Count((byte)'\n') + all.Count((byte)'\r') > 3 * TraceLimits.MaxPieces)
        {
            throw new TraceFault(file, 1, 1, "fault.too-many-pieces", TraceLimits.MaxPieces);
        }

        string text;
        try
        {
            text = new System.Text.UTF8Encoding(false, throwOnInvalidBytes: true).GetString(
                bytes.Span
            );
        }
        catch (System.Text.DecoderFallbackException)
        {
            // A header in an old western code page; figures are the same in all.
            text = System.Text.Encoding.Latin1.GetString(bytes.Span);
        }

        return new CsvReader(file, text.TrimStart('\uFEFF')).Run();
    }

    private TraceFile Run()
    {
        List<CsvRow> rows = [];
        List<List<CsvRow>> blocks = [rows];
        for (int i = 0; i < lines.Length; i++)
        {
            ReadOnlySpan<char> line = lines[i].AsSpan().Trim();
            if (line.StartsWith("#"))
            {
                continue;
            }

            if (line.IsEmpty)
            {
                if (rows.Count > 0)
                {
                    rows = [];
                    blocks.Add(rows);
                }

                continue;
            }

            if (count == 0 && CsvHeader.Read(lines[i], separator) is { } found)
            {
                header = found;
                continue;
            }

            rows.Add(Row(i));
        }

        blocks.RemoveAll(block => block.Count == 0);
        if (blocks.Count == 0)
        {
            throw new TraceFault(file, 1, 1, "fault.csv-empty");
        }

        CsvColumns columns = header.Columns == CsvColumns.Unknown ? Guess(blocks) : header.Columns;
        int wanted = columns == CsvColumns.BothHalfWidths ? 3 : 2;
        if (count < wanted)
        {
            throw new TraceFault(file, blocks[0][0].Line, 1, "fault.csv-columns", count);
        }

        double mm = header.MmPerUnit ?? 1;
        foreach (List<CsvRow> block in blocks)
        {
            Add(block, columns, mm);
        }

        TraceLayout layout = columns switch
        {
            CsvColumns.Points => TraceLayout.Drawing,
            CsvColumns.BothHalfWidths => TraceLayout.BothHalfWidths,
            _ => TraceLayout.HalfWidths,
        };
        TraceUnit unit = new(
            mm,
            header.MmPerUnit is not null,
            header.MmPerUnit is not null ? "unit.csv" : "unit.csv-mm"
        );
        return new TraceFile(file, layout, unit, sink.Curves, []);
    }

    private void Add(List<CsvRow> block, CsvColumns columns, double mm)
    {
        if (block.Count < 2)
        {
            throw new TraceFault(file, block[0].Line, 1, "fault.csv-few", block.Count);
        }

        if (columns != CsvColumns.Points)
        {
            for (int i = 1; i < block.Count; i++)
            {
                if (block[i].A <= block[i - 1].A)
                {
                    throw new TraceFault(file, block[i].Line, 1, "fault.csv-stations", block[i].A);
                }
            }
        }

        double across = columns == CsvColumns.Widths ? 0.5 : 1;
        Affine map = Affine.Scale(mm, mm);
        if (columns == CsvColumns.BothHalfWidths)
        {
            Add([.. block.Select(row => new Point(row.A, -row.B))], map, block[0].Line);
            Add([.. block.Select(row => new Point(row.A, row.C))], map, block[0].Line);
        }
        else
        {
            Add([.. block.Select(row => new Point(row.A, across * row.B))], map, block[0].Line);
        }
    }

    private void Add(List<Point> places, Affine map, int line)
    {
        // A file that repeats its first point at the end means a closed curve.
        bool isClosed = places.Count > 3 && places[0] == places[^1];
        sink.Add([new PointsPiece(places)], isClosed, map, "", line, 1);
    }

    private CsvRow Row(int index)
    {
        string line = lines[index];
        Span<Range> cells = stackalloc Range[CsvSeparator.MaxCells];
        int found = separator.Split(line, cells);
        if (count == 0)
        {
            count = found;
        }

        if (found != count)
        {
            throw new TraceFault(file, index + 1, 1, "fault.csv-row", found, count);
        }

        Span<double> values = stackalloc double[3];
        for (int i = 0; i < Math.Min(found, 3); i++)
        {
            ReadOnlySpan<char> cell = line.AsSpan(cells[i]).Trim().Trim('"').Trim();
            if (!separator.TryNumber(cell, out values[i]))
            {
                string shown = cell.Length > 24 ? cell[..24].ToString() + "…" : cell.ToString();
                int column = cells[i].GetOffsetAndLength(line.Length).Offset + 1;
                throw new TraceFault(file, index + 1, column, "fault.csv-number", shown);
            }
        }

        return new CsvRow(values[0], values[1], values[2], index + 1);
    }

    /// <summary>Without a header: rising stations and widths that are not negative are half widths, all else is points.</summary>
    private CsvColumns Guess(List<List<CsvRow>> blocks)
    {
        bool rises = blocks.All(block =>
            block.Zip(block.Skip(1)).All(pair => pair.Second.A > pair.First.A)
        );
        bool isPositive = blocks.All(block => block.All(row => row.B >= 0 && row.C >= 0));
        return !rises || !isPositive || blocks.Count > 1 ? CsvColumns.Points
            : count >= 3 ? CsvColumns.BothHalfWidths
            : CsvColumns.HalfWidths;
    }
}

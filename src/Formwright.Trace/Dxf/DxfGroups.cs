using System.Globalization;
using Formwright.Trace.Files;

namespace Formwright.Trace.Dxf;

/// <summary>The groups of an ASCII DXF, one after the other: a code line and a value line each.</summary>
internal sealed class DxfGroups
{
    private readonly ReadOnlyMemory<byte> bytes;
    private readonly string file;
    private int at;
    private int lines;
    private bool isHeld;

    internal DxfGroups(ReadOnlyMemory<byte> bytes, string file)
    {
        this.bytes = bytes;
        this.file = file;
        // A byte order mark, where an editor put one.
        at = bytes.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? 3 : 0;
    }

    internal int Code { get; private set; }

    internal string Text { get; private set; } = "";

    /// <summary>Line of the value, from 1.</summary>
    internal int Line => lines;

    /// <summary>Whether the present group starts a record of this kind.</summary>
    internal bool Is(string kind) => Code == 0 && Text == kind;

    /// <summary>Moves to the next group; false at the end of the file.</summary>
    /// <exception cref="TraceFault">A code is no number, or its value is missing.</exception>
    internal bool Next()
    {
        if (isHeld)
        {
            isHeld = false;
            return true;
        }

        ReadOnlySpan<byte> code;
        do
        {
            if (at >= bytes.Length)
            {
                return false;
            }

            code = TakeLine();
        } while (code.IsEmpty && at >= bytes.Length);

        if (
            !int.TryParse(
                code,
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out int number
            )
        )
        {
            string shown = System.Text.Encoding.Latin1.GetString(code[..Math.Min(code.Length, 20)]);
            throw new TraceFault(file, lines, 1, "fault.dxf-code", shown);
        }

        if (at >= bytes.Length)
        {
            throw new TraceFault(file, lines, 1, "fault.dxf-cut");
        }

        ReadOnlySpan<byte> value = TakeLine();
        Code = number;
        Text = value.Length > 2048 ? "" : System.Text.Encoding.Latin1.GetString(value);
        return true;
    }

    /// <summary>The next call of <see cref="Next"/> gives the present group again.</summary>
    internal void Hold() => isHeld = true;

    /// <summary>Moves to the next group, which must be there.</summary>
    /// <exception cref="TraceFault">The file ends.</exception>
    internal void MustNext()
    {
        if (!Next())
        {
            throw new TraceFault(file, Math.Max(1, lines), 1, "fault.dxf-cut");
        }
    }

    /// <summary>The value as a number.</summary>
    /// <exception cref="TraceFault">It is none, or not finite.</exception>
    internal double Number() =>
        double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        && double.IsFinite(value)
            ? value
            : throw new TraceFault(
                file,
                lines,
                1,
                "fault.dxf-number",
                Text.Length > 24 ? Text[..24] + "…" : Text,
                Code
            );

    /// <summary>The value as a whole number.</summary>
    internal int Whole() => (int)Math.Clamp(Number(), int.MinValue, int.MaxValue);

    private ReadOnlySpan<byte> TakeLine()
    {
        ReadOnlySpan<byte> rest = bytes.Span[at..];
        int end = rest.IndexOfAny((byte)'\n', (byte)'\r');
        ReadOnlySpan<byte> line = end < 0 ? rest : rest[..end];
        at += end < 0 ? rest.Length : end + 1;
        if (
            end >= 0
            && rest[end] == (byte)'\r'
            && end + 1 < rest.Length
            && rest[end + 1] == (byte)'\n'
        )
        {
            at++;
        }

        lines++;
        return line.Trim(" \t"u8);
    }
}

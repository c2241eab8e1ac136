using System.Globalization;
using System.Text;

namespace Formwright.Writers;

/// <summary>Collects the lines of a DXF file: a group code, then its value. Handles count up from 100000 (hexadecimal), above the fixed ones.</summary>
internal sealed class DxfText
{
    private readonly StringBuilder text = new();
    private int lastHandle = 0xFFFFF;

    public string NextHandle() => (++lastHandle).ToString("X", CultureInfo.InvariantCulture);

    public DxfText Add(int code, string value)
    {
        text.Append(CultureInfo.InvariantCulture, $"{code, 3}\n{value}\n");
        return this;
    }

    public DxfText Add(int code, int value) =>
        Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A real, never an exponent, never a number that is not finite.</summary>
    public DxfText Add(int code, double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), "Not a finite number.");
        }

        double rounded = Math.Round(value, 8);
        return Add(
            code,
            (rounded == 0 ? 0 : rounded).ToString("0.0#######", CultureInfo.InvariantCulture)
        );
    }

    /// <summary>A point with its z at 0.</summary>
    public DxfText AddPoint(int code, double x, double y) =>
        Add(code, x).Add(code + 10, y).Add(code + 20, 0.0);

    public override string ToString() => text.ToString();
}

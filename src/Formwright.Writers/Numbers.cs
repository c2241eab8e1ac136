using System.Globalization;
using System.Text;

namespace Formwright.Writers;

/// <summary>Numbers in files: invariant, short, never negative zero, never an exponent.</summary>
internal static class Numbers
{
    /// <summary>Appends a number of mm to a thousandth.</summary>
    public static StringBuilder AppendMm(this StringBuilder text, double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), "Not a finite number.");
        }

        double rounded = Math.Round(value, 3);
        return text.Append(CultureInfo.InvariantCulture, $"{(rounded == 0 ? 0 : rounded):0.###}");
    }
}

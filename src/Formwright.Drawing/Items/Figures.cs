using System.Globalization;

namespace Formwright.Drawing;

/// <summary>Figures as a maker reads them, in the reader's culture and with a true minus.</summary>
public static class Figures
{
    /// <summary>A length in mm without its unit, with no more decimals than it needs: 488, 106.9.</summary>
    /// <exception cref="ArgumentException">The value is not a finite number.</exception>
    public static string Mm(double valueMm, int decimals = 1)
    {
        if (!double.IsFinite(valueMm))
        {
            throw new ArgumentOutOfRangeException(nameof(valueMm));
        }

        double rounded = Math.Round(valueMm, decimals, MidpointRounding.AwayFromZero);
        string pattern = decimals == 0 ? "0" : "0." + new string('#', decimals);
        return Written(rounded, pattern);
    }

    /// <summary>A length in mm with all its decimals, for columns: 1.50.</summary>
    /// <exception cref="ArgumentException">The value is not a finite number.</exception>
    public static string Fixed(double valueMm, int decimals = 2)
    {
        if (!double.IsFinite(valueMm))
        {
            throw new ArgumentOutOfRangeException(nameof(valueMm));
        }

        double rounded = Math.Round(valueMm, decimals, MidpointRounding.AwayFromZero);
        return Written(rounded, $"F{decimals}");
    }

    // As wide as a plus, unlike the hyphen of the keyboard; and never a minus before 0.
    private static string Written(double rounded, string pattern) =>
        (rounded < 0 ? "−" : "") + Math.Abs(rounded).ToString(pattern, CultureInfo.CurrentCulture);
}

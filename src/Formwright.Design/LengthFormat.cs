using System.Globalization;

namespace Formwright.Design;

/// <summary>
/// Writes lengths for people: mm or decimal inches in the person's culture, or inches as fractions. What is written is rounded, so each
/// says by how much; <see cref="Lengths.Read"/> reads it back to exactly that.
/// </summary>
public static class LengthFormat
{
    /// <summary>Finest fraction of an inch that a rule shows.</summary>
    public const int FinestDenominator = 64;

    private const int MostDecimals = 6;

    /// <summary>Largest length that is written, mm; beyond it a double no longer holds the last decimals.</summary>
    private const double LargestMm = 1e9;

    /// <summary><c>12.50 mm</c>; <c>12,50 mm</c> in Spanish.</summary>
    /// <param name="lengthMm">The length, mm; at most 1e9 either way.</param>
    /// <param name="decimals">Decimals, 0 to 6.</param>
    /// <param name="culture">Whose figures; null for the person at the page (<see cref="CultureInfo.CurrentCulture"/>).</param>
    /// <exception cref="ArgumentOutOfRangeException">A length that is no ordinary number, or too many decimals.</exception>
    public static WrittenLength Millimetres(
        double lengthMm,
        int decimals,
        CultureInfo? culture = null
    ) => Decimal(lengthMm, 1, "mm", decimals, culture);

    /// <summary><c>0.492 in</c>; <c>0,492 in</c> in Spanish.</summary>
    /// <inheritdoc cref="Millimetres"/>
    public static WrittenLength Inches(
        double lengthMm,
        int decimals,
        CultureInfo? culture = null
    ) => Decimal(lengthMm, Lengths.MmPerInch, "in", decimals, culture);

    /// <summary>Inches as a whole number and the nearest fraction, in lowest terms: <c>19 7/32 in</c>, <c>3/4 in</c>, <c>2 in</c>.</summary>
    /// <param name="lengthMm">The length, mm; at most 1e9 either way.</param>
    /// <param name="denominator">Finest fraction: 2, 4, 8, 16, 32 or 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length that is no ordinary number, or no such denominator.</exception>
    public static WrittenLength InchFraction(double lengthMm, int denominator = FinestDenominator)
    {
        CheckLength(lengthMm);
        if (denominator is < 1 or > FinestDenominator || !int.IsPow2(denominator))
        {
            throw new ArgumentOutOfRangeException(nameof(denominator));
        }

        long parts = (long)
            Math.Round(
                Math.Abs(lengthMm) / Lengths.MmPerInch * denominator,
                MidpointRounding.AwayFromZero
            );
        double writtenMm = parts * Lengths.MmPerInch / denominator * Math.Sign(lengthMm);
        (long whole, long top) = Math.DivRem(parts, denominator);
        long bottom = denominator;
        while (top > 0 && top % 2 == 0)
        {
            (top, bottom) = (top / 2, bottom / 2);
        }

        string sign = writtenMm < 0 ? "-" : "";
        string figure =
            top == 0 ? $"{whole}"
            : whole == 0 ? $"{top}/{bottom}"
            : $"{whole} {top}/{bottom}";
        return new WrittenLength($"{sign}{figure} in", writtenMm - lengthMm);
    }

    private static WrittenLength Decimal(
        double lengthMm,
        double mmPerUnit,
        string unit,
        int decimals,
        CultureInfo? culture
    )
    {
        CheckLength(lengthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, MostDecimals);

        // Adding zero turns a rounded -0 into 0.
        double rounded =
            Math.Round(lengthMm / mmPerUnit, decimals, MidpointRounding.AwayFromZero) + 0.0;
        NumberFormatInfo figures = (culture ?? CultureInfo.CurrentCulture).NumberFormat;
        string text = rounded.ToString($"F{decimals}", figures);
        return new WrittenLength($"{text} {unit}", rounded * mmPerUnit - lengthMm);
    }

    private static void CheckLength(double lengthMm)
    {
        if (!(Math.Abs(lengthMm) <= LargestMm))
        {
            throw new ArgumentOutOfRangeException(nameof(lengthMm));
        }
    }
}

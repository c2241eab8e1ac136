using System.Globalization;
using Formwright.Design;

namespace Formwright.Web.Reading;

/// <summary>How a length that a person typed goes into the design file.</summary>
public static class LengthText
{
    /// <summary>Arrow keys: 0.1 mm, with shift 1 mm; in inches 1/64 in, with shift 1/16 in.</summary>
    public static double StepMm(bool isShift, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return reader.Inches ? Lengths.MmPerInch / (isShift ? 16 : 64)
            : isShift ? 1
            : 0.1;
    }

    /// <summary>mm as a plain number; inches as they were typed, so that the file keeps <c>"3/4 in"</c>.</summary>
    /// <param name="text">What was typed; <see cref="Lengths.Read"/> reads it.</param>
    /// <param name="mm">What it means, mm.</param>
    /// <param name="reader">Who typed it.</param>
    public static string Toml(string text, double mm, Reader reader)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(reader);
        bool hasUnit = text.Any(c => char.IsLetter(c) || c is '"' or '″' or '”');
        if (hasUnit || !reader.Inches)
        {
            string typed = text.Trim().Replace(',', '.');
            return
                hasUnit && !typed.Contains('"') && !typed.EndsWith("mm", StringComparison.Ordinal)
                ? $"\"{typed}\""
                : Number(mm);
        }

        return $"\"{text.Trim().Replace(',', '.')} in\"";
    }

    /// <summary>A number as TOML, to the millionth.</summary>
    public static string Number(double value) =>
        Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}

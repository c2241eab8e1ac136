using System.Globalization;
using Formwright.Design;
using Microsoft.AspNetCore.Http;

namespace Formwright.Web.Reading;

/// <summary>The person at the page: language, units, decimal mark and theme. Written as <c>es.in.comma.dark</c>.</summary>
/// <param name="Language"><c>en</c> or <c>es</c>.</param>
/// <param name="Inches">Inches rather than mm.</param>
/// <param name="Comma">Decimal comma rather than point.</param>
/// <param name="Theme"><c>light</c>, <c>dark</c>, or <c>auto</c> for what the machine is set to.</param>
public sealed record Reader(string Language, bool Inches, bool Comma, string Theme)
{
    public const string CookieName = "formwright";

    /// <summary>How far a fraction of an inch may be off and still stand for the length, mm: rounding, not geometry.</summary>
    private const double FractionToleranceMm = 1e-6;

    /// <summary>What one means in a length without a unit, mm.</summary>
    public double MmPerUnit => Inches ? Lengths.MmPerInch : 1;

    public string Unit => Inches ? "in" : "mm";

    /// <summary>The culture of texts and figures.</summary>
    public CultureInfo Culture
    {
        get
        {
            CultureInfo culture = (CultureInfo)CultureInfo.GetCultureInfo(Language).Clone();
            culture.NumberFormat.NumberDecimalSeparator = Comma ? "," : ".";
            culture.NumberFormat.NumberGroupSeparator = "\u202f";
            return culture;
        }
    }

    /// <summary>The reader of a request: the cookie, or the language that the browser asks for.</summary>
    public static Reader Of(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        bool spanish = context
            .Request.Headers.AcceptLanguage.ToString()
            .StartsWith("es", StringComparison.OrdinalIgnoreCase);
        return Parse(context.Request.Cookies[CookieName], spanish ? "es" : "en");
    }

    /// <summary>Reads what <see cref="ToString"/> wrote; anything else gives the usual.</summary>
    public static Reader Parse(string? text, string language = "en")
    {
        string[] parts = (text ?? "").Split('.');
        return
            parts
                is [
                    ("en" or "es")
                    and var spoken,
                    ("mm" or "in")
                    and var unit,
                    ("comma" or "point")
                    and var mark,
                    ("light" or "dark" or "auto")
                    and var theme,
                ]
            ? new Reader(spoken, unit == "in", mark == "comma", theme)
            : new Reader(language, false, language == "es", "auto");
    }

    /// <summary>Makes this reader's culture that of the running work.</summary>
    public void Apply()
    {
        CultureInfo.CurrentCulture = Culture;
        CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(Language);
    }

    /// <summary>A figure rounded for reading, without a unit: mm, or decimal inches.</summary>
    public string Figure(double mm, int decimals = 1)
    {
        if (!double.IsFinite(mm))
        {
            return "–";
        }

        int places = Inches ? decimals + 2 : decimals;
        double value = Math.Round(mm / MmPerUnit, places, MidpointRounding.AwayFromZero) + 0.0;
        return value.ToString($"F{places}", Culture);
    }

    /// <summary>A figure that is no length, rounded for reading.</summary>
    public string Number(double value, int decimals = 0) =>
        double.IsFinite(value)
            ? (Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0).ToString(
                $"F{decimals}",
                Culture
            )
            : "–";

    /// <summary>A value whole, as it can be typed again: mm to the thousandth, inches as a fraction where one is exact.</summary>
    public string Whole(double mm)
    {
        if (!Inches)
        {
            return Math.Round(mm, 4).ToString("0.####", Culture);
        }

        WrittenLength fraction = LengthFormat.InchFraction(mm);
        return Math.Abs(fraction.ErrorMm) < FractionToleranceMm
            ? fraction.Text[..^3]
            : Math.Round(mm / Lengths.MmPerInch, 5).ToString("0.#####", Culture);
    }

    /// <summary>The same for reading only: inches that are no fraction to the thousandth.</summary>
    public string Rounded(double mm) =>
        Whole(mm) is { Length: <= 7 } whole ? whole : Figure(mm, decimals: 1);

    public override string ToString() =>
        $"{Language}.{(Inches ? "in" : "mm")}.{(Comma ? "comma" : "point")}.{Theme}";
}

using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Drawing;
using Xunit;

namespace Formwright.Sheets.Tests;

/// <summary>What the drawing office would send back.</summary>
internal static partial class Flaws
{
    /// <summary>Makes sheets in a language and asserts that none has a flaw in it.</summary>
    /// <returns>The sheets.</returns>
    public static NamedSheet[] NoneIn(string language, Func<IEnumerable<NamedSheet>> make)
    {
        NamedSheet[] sheets = Made(language, () => (NamedSheet[])[.. make()]);
        Assert.NotEmpty(sheets);
        string[] flaws = Made(
            language,
            () => (string[])[.. Of(sheets), .. sheets.SelectMany(named => Marks(named, language))]
        );
        Assert.True(flaws.Length == 0, string.Join(Environment.NewLine, flaws));
        return sheets;
    }

    /// <summary>The flaws of sheets, each with the sheet's name.</summary>
    public static IEnumerable<string> Of(IEnumerable<NamedSheet> sheets) =>
        sheets.SelectMany(named =>
            SheetAudit.Of(named.Sheet).Select(flaw => $"{named.Id}: {flaw}")
        );

    /// <summary>All that is written on sheets.</summary>
    public static IEnumerable<string> Texts(IEnumerable<NamedSheet> sheets) =>
        sheets.SelectMany(named =>
            named.Sheet.Draw().Marks.OfType<TextMark>().Select(mark => mark.Text)
        );

    /// <summary>Runs in the words and figures of a language.</summary>
    public static T Made<T>(string language, Func<T> make)
    {
        (CultureInfo words, CultureInfo figures) = (
            CultureInfo.CurrentUICulture,
            CultureInfo.CurrentCulture
        );
        try
        {
            CultureInfo.CurrentUICulture = new CultureInfo(language);
            CultureInfo.CurrentCulture = new CultureInfo(language);
            return make();
        }
        finally
        {
            (CultureInfo.CurrentUICulture, CultureInfo.CurrentCulture) = (words, figures);
        }
    }

    // A decimal comma in Spanish, a decimal point in English, and never one for the other.
    private static IEnumerable<string> Marks(NamedSheet named, string language) =>
        Texts([named])
            .Where(text => (language == "es" ? Point() : Comma()).IsMatch(text))
            .Select(text => $"{named.Id}: decimal mark of another language: {text}");

    [GeneratedRegex(@"\d\.\d")]
    private static partial Regex Point();

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex Comma();
}

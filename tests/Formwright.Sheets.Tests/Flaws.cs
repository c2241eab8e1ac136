using System.Globalization;
using Formwright.Drawing;
using Xunit;

namespace Formwright.Sheets.Tests;

/// <summary>What the drawing office would send back.</summary>
internal static class Flaws
{
    /// <summary>Makes sheets in a language and asserts that none has a flaw in it.</summary>
    /// <returns>The sheets.</returns>
    public static NamedSheet[] NoneIn(string language, Func<IEnumerable<NamedSheet>> make)
    {
        CultureInfo before = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentUICulture = new CultureInfo(language);
            NamedSheet[] sheets = [.. make()];
            Assert.NotEmpty(sheets);
            string[] flaws = [.. Of(sheets)];
            Assert.True(flaws.Length == 0, string.Join(Environment.NewLine, flaws));
            return sheets;
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    /// <summary>The flaws of sheets, each with the sheet's name.</summary>
    public static IEnumerable<string> Of(IEnumerable<NamedSheet> sheets) =>
        sheets.SelectMany(named =>
            SheetAudit.Of(named.Sheet).Select(flaw => $"{named.Id}: {flaw}")
        );
}

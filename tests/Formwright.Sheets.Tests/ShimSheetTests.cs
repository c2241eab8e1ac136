using System.Globalization;
using Formwright.Design;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Jigs.BoardChecks;
using Formwright.Jigs.Workboard;
using Formwright.Sheets.Tooling;
using Formwright.Testing;
using Xunit;

namespace Formwright.Sheets.Tests;

public sealed class ShimSheetTests
{
    [Theory]
    [InlineData("en", "nut=1.9/1.6,fret5=1.1/0.9", "shim")]
    [InlineData("es", "nut=1.9/1.6,fret5=1.1/0.9", "shim")]
    [InlineData("en", "nut=4.5", "shim")]
    [InlineData("es", "nut=0.9", "plane")]
    [InlineData("en", "nut=1.8/1.2", "shim,plane")]
    [InlineData("en", "nut=1.5", "")]
    public void What_is_needed_is_drawn_without_a_flaw(
        string language,
        string measured,
        string expected
    )
    {
        CultureInfo before = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentUICulture = new CultureInfo(language);
            IReadOnlyList<NamedSheet> sheets = SheetsOf(measured);
            Assert.Equal(expected, string.Join(',', sheets.Select(sheet => sheet.Id)));
            Assert.Empty(Flaws.Of(sheets));
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    private static IReadOnlyList<NamedSheet> SheetsOf(string measured)
    {
        Guitar guitar = Guitar
            .Build(DesignText.Load(Repository.PathOf("examples", "heron.toml")).Design!)
            .Guitar!;
        WorkboardPlan plan = Jigs.Tooling.Of(guitar).Workboard;
        ChainModel chain = NeckAndAction.Of(guitar, builds: 0).Model;
        IReadOnlyList<MeasuredGap> gaps = MeasuredGaps.Parse(measured, plan.GapTable).Gaps;
        return ShimSheet.Of(guitar, BoardCheck.Of(guitar, plan, chain, gaps));
    }
}

using Formwright.Design;
using Formwright.Sheets;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>The sheets of a study, made at once or in two goes.</summary>
public sealed class StudySheetsTests
{
    [Fact]
    public void Sheets_of_the_stock_may_be_added_later()
    {
        Study study = Study.Of(DesignText.Parse(DesignModels.TextOf("plover"), "").Design!);
        IReadOnlyList<NamedSheet> early = study.Sheets(withStock: false);
        Assert.DoesNotContain(early, named => SheetSet.IsOfStock(named.Id));
        IReadOnlyList<NamedSheet> whole = study.WithStock(early);
        Assert.Contains(whole, named => SheetSet.IsOfStock(named.Id));
        Assert.Equal(study.Sheets().Select(Said), whole.Select(Said));
    }

    private static (string, string, int, int) Said(NamedSheet named) =>
        (
            named.Id,
            named.Sheet.Title.Title,
            named.Sheet.Title.SheetNumber,
            named.Sheet.Title.SheetCount
        );
}

using Formwright.Drawing;
using Formwright.Jigs.Brackets;

namespace Formwright.Sheets.Brackets;

/// <summary>The sheets of a bracket jig: the slotted board, the bracket, and for each instrument its setting sheet at true size.</summary>
public static class JigSheets
{
    /// <summary>The sheets, not numbered.</summary>
    public static IReadOnlyList<NamedSheet> Of(JigPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<NamedSheet> sheets = [JigBoardSheet.Of(plan)];
        if (plan.Brackets > 0)
        {
            sheets.Add(BracketSheet.Of(plan));
        }

        bool isFamily = plan.Members.Count > 1;
        sheets.AddRange(
            plan.Members.Select(
                (member, i) =>
                    SettingSheet.Of(plan, member, isFamily ? $"jig-setting-{i + 1}" : "jig-setting")
            )
        );
        return sheets;
    }

    /// <summary>The sheets of a family, numbered among themselves.</summary>
    public static IReadOnlyList<NamedSheet> Numbered(JigPlan plan)
    {
        IReadOnlyList<NamedSheet> sheets = Of(plan);
        return
        [
            .. sheets.Select(
                (named, i) =>
                    named with
                    {
                        Sheet = named.Sheet with
                        {
                            Title = named.Sheet.Title with
                            {
                                SheetNumber = i + 1,
                                SheetCount = sheets.Count,
                            },
                        },
                    }
            ),
        ];
    }

    /// <summary>The title block of a sheet that all members share.</summary>
    internal static TitleBlock Title(JigPlan plan, string titleKey)
    {
        TitleBlock title = Titles.Of(plan.Members[0].Rib.Guitar, titleKey);
        return plan.Members.Count == 1
            ? title
            : title with
            {
                Title = SheetsWords.Of.Format(
                    "jig.family-title",
                    plan.Members[0].Name,
                    plan.Members.Count - 1,
                    SheetsWords.Of[titleKey]
                ),
                IdentificationNumber = "",
            };
    }
}

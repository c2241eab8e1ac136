using Formwright.Drawing;
using Formwright.Instrument;
using Formwright.Sheets.Outline;
using Formwright.Sheets.Tooling;

namespace Formwright.Sheets;

/// <summary>All sheets of one design, in trade order. Their language is the thread's UI culture.</summary>
public static class SheetSet
{
    /// <summary>The sheets, numbered.</summary>
    public static IReadOnlyList<NamedSheet> Of(Guitar guitar, Jigs.Tooling tooling)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(tooling);
        List<NamedSheet> sheets =
        [
            OutlineSheet.Of(guitar),
            .. TemplateSheets.Of(guitar, tooling),
            WorkboardSheet.Of(guitar, tooling.Workboard),
            GapSheet.Of(guitar, tooling.Workboard),
        ];
        if (tooling.Mould.Parts.Count > 0)
        {
            sheets.Add(MouldSheet.Of(guitar, tooling.Mould));
        }

        return [.. sheets.Select((named, i) => Numbered(named, i + 1, sheets.Count))];
    }

    private static NamedSheet Numbered(NamedSheet named, int number, int count)
    {
        TitleBlock title = named.Sheet.Title with { SheetNumber = number, SheetCount = count };
        return named with { Sheet = named.Sheet with { Title = title } };
    }
}

using System.Globalization;
using System.Text;
using Formwright.Jigs.Stock;

namespace Formwright.Packs;

/// <summary>The cut list for a spreadsheet: one row for each part, figures with a point, texts quoted (RFC 4180).</summary>
internal static class CutListCsv
{
    /// <summary>The text of the file.</summary>
    public static string Write(StockPlan plan)
    {
        StringBuilder text = new();
        text.Append(
            "number,part,name,quantity,material,thickness_mm,length_mm,width_mm,sheets\r\n"
        );
        foreach (CutListRow row in plan.CutList)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{row.Number},{row.Part.Id},{Quoted(row.Part.Name)},{row.Part.Quantity},"
            );
            text.Append(
                CultureInfo.InvariantCulture,
                $"{row.Part.Material["material.".Length..]},{row.Part.ThicknessMm:0.###},{row.LengthMm:0.#},{row.WidthMm:0.#},"
            );
            text.Append(Quoted(string.Join(' ', row.Sheets))).Append("\r\n");
        }

        return text.ToString();
    }

    private static string Quoted(string text) =>
        $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}

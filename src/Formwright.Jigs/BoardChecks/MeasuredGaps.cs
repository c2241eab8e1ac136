using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Design.Reading;
using Formwright.Jigs.Workboard;

namespace Formwright.Jigs.BoardChecks;

/// <summary>
/// Measured gaps as a maker types them: <c>nut=1.9,fret5=1.1</c>, bass and treble apart as <c>nut=1.9/1.6</c>. A decimal comma is a
/// decimal comma: a comma parts two places only where a name follows it.
/// </summary>
/// <param name="Gaps">What was read.</param>
/// <param name="Faults">What could not be read, one sentence each; empty where all could.</param>
public sealed partial record MeasuredGaps(
    IReadOnlyList<MeasuredGap> Gaps,
    IReadOnlyList<string> Faults
)
{
    /// <summary>A gap beyond this is taken for a slip of the pen, mm.</summary>
    public const double MostMm = 50;

    /// <summary>Reads measured gaps against the places of a gap table.</summary>
    public static MeasuredGaps Parse(string text, IReadOnlyList<GapRow> table)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(table);
        string[] places = [.. table.Where(row => !row.IsRest).Select(row => row.Place)];
        List<MeasuredGap> gaps = [];
        List<string> faults = [];
        foreach (string entry in Entries().Split(text).Select(part => part.Trim(' ', ',', ';')))
        {
            if (entry.Length == 0)
            {
                continue;
            }

            string[] sides = entry.Split('=', 2, StringSplitOptions.TrimEntries);
            string place = sides[0].ToLowerInvariant();
            if (!places.Contains(place))
            {
                string near = Nearest.To(place, places) ?? "nut";
                faults.Add(JigsWords.Of.Format("measured.unknown-place", sides[0], near));
            }
            else if (gaps.Any(gap => gap.Place == place))
            {
                faults.Add(JigsWords.Of.Format("measured.twice", place));
            }
            else if (
                Read(sides.Length > 1 ? sides[1] : "") is (double bass, double treble, bool two)
            )
            {
                gaps.Add(new MeasuredGap(place, bass, treble, two));
            }
            else
            {
                faults.Add(JigsWords.Of.Format("measured.no-figure", entry, place, MostMm));
            }
        }

        if (gaps.Count == 0 && faults.Count == 0)
        {
            faults.Add(JigsWords.Of["measured.nothing"]);
        }

        return new MeasuredGaps(gaps, faults);
    }

    private static (double Bass, double Treble, bool Two)? Read(string text)
    {
        string[] figures = text.Split('/', StringSplitOptions.TrimEntries);
        if (figures.Length > 2 || Figure(figures[0]) is not { } bass)
        {
            return null;
        }

        return figures.Length == 1 ? (bass, bass, false)
            : Figure(figures[1]) is { } treble ? (bass, treble, true)
            : null;
    }

    private static double? Figure(string text)
    {
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        string plain = text.EndsWith("mm", StringComparison.Ordinal) ? text[..^2].TrimEnd() : text;
        return
            double.TryParse(
                plain.Replace(',', '.'),
                Style,
                CultureInfo.InvariantCulture,
                out double value
            )
            && Math.Abs(value) <= MostMm
            ? value
            : null;
    }

    [GeneratedRegex(@"[,;\s]+(?=[A-Za-z]\w*\s*=)")]
    private static partial Regex Entries();
}

using System.Text.RegularExpressions;
using Formwright.Design;
using Formwright.Findings;

namespace Formwright.Cli;

/// <summary>Prints findings for a person, gravest first: what is wrong, the figure and its limit, where the limit comes from, what to change.</summary>
internal static partial class FindingList
{
    private const int Width = 92;

    public static void Write(
        TextWriter to,
        string file,
        DesignReading reading,
        IReadOnlyList<Finding> findings
    )
    {
        if (findings.Count == 0)
        {
            to.WriteLine(CliWords.Of.Format("check.clean", file));
            return;
        }

        foreach (
            IGrouping<Severity, Finding> group in findings
                .GroupBy(each => each.Severity)
                .OrderByDescending(each => each.Key)
        )
        {
            to.WriteLine(
                CliWords.Of.Format(
                    $"check.{group.Key.ToString().ToLowerInvariant()}",
                    file,
                    group.Count()
                )
            );
            foreach (Finding finding in group)
            {
                One(to, file, reading, finding);
            }

            to.WriteLine();
        }
    }

    private static void One(TextWriter to, string file, DesignReading reading, Finding finding)
    {
        string place = reading.PlaceOf(finding.Field) is { } at
            ? $"{file}:{at.Line}:{at.Column}"
            : file;
        to.WriteLine($"  {place}: {finding.Rule.Title} [{finding.Code}]");
        Lines(to, finding.Message);
        string unit = finding.Rule.Unit.Length == 0 ? "" : " " + finding.Rule.Unit;
        if (double.IsFinite(finding.Measured) && double.IsFinite(finding.Limit))
        {
            string figures = CliWords.Of.Format(
                "check.figures",
                finding.Measured,
                finding.Limit,
                unit
            );
            Lines(to, $"{figures} {finding.Source}");
        }
        else
        {
            Lines(to, finding.Source);
        }

        Lines(
            to,
            CliWords.Of.Format("check.cure", finding.Cure, Index().Replace(finding.Field, ""))
        );
    }

    private static void Lines(TextWriter to, string text)
    {
        foreach (string line in Wrapped.Lines(text, Width - 4))
        {
            to.WriteLine("    " + line);
        }
    }

    // harmonic_bars[1].at: the place before it has the line.
    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}

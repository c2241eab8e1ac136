using System.Globalization;
using System.Text.RegularExpressions;
using Formwright.Design;
using Formwright.Sheets;
using Formwright.Testing;
using Formwright.Writers;
using Xunit;

namespace Formwright.Packs.Tests;

/// <summary>The sheets of a real design, read back by poppler and measured.</summary>
public sealed partial class PrintTests
{
    private const double MmPerPoint = 25.4 / 72;

    [Fact]
    public void A_full_size_sheet_has_its_exact_size_and_the_outline_its_true_width()
    {
        Study study = Study.Of(
            DesignText.Load(Repository.PathOf("examples", "heron.toml")).Design!
        );
        NamedSheet outline = study.Sheets().Single(sheet => sheet.Id == "template-full");
        string pdf = Tools.TempFile(".pdf");
        using (FileStream to = File.Create(pdf))
        {
            PdfWriter.Write(to, [outline.Sheet.Draw()]);
        }

        Match size = PageSize().Match(Tools.Run("pdfinfo", "-f", "1", "-l", "1", pdf));
        Assert.Equal(outline.Sheet.Paper.WidthMm, Number(size, 1) * MmPerPoint, 0.001);
        Assert.Equal(outline.Sheet.Paper.HeightMm, Number(size, 2) * MmPerPoint, 0.001);

        // Poppler's own vector output, in points; the template's edge is the widest path that is no frame.
        string svg = Tools.TempFile(".svg");
        Tools.Run("pdftocairo", "-svg", pdf, svg);
        double[] widths =
        [
            .. PathData()
                .Matches(File.ReadAllText(svg))
                .Select(match => WidthOf(match.Groups[1].Value) * MmPerPoint)
                .Where(width => width < outline.Sheet.Frame.WidthMm - 5),
        ];
        Assert.Equal(study.Design.Outline.LowerBout.WidthMm, widths.Max(), 0.05);
    }

    // Absolute moves, lines and cubics, as poppler's backend writes them; each cubic is walked in 64 steps.
    private static double WidthOf(string data)
    {
        List<double> x = [];
        char command = 'M';
        List<double> numbers = [];
        double current = 0;
        foreach (Match token in Token().Matches(data))
        {
            if (char.IsLetter(token.Value[0]))
            {
                command = token.Value[0];
                numbers.Clear();
                continue;
            }

            numbers.Add(double.Parse(token.Value, CultureInfo.InvariantCulture));
            if (command == 'C' && numbers.Count == 6)
            {
                for (int i = 1; i <= 64; i++)
                {
                    double t = i / 64.0;
                    double s = 1 - t;
                    x.Add(
                        (s * s * s * current)
                            + (3 * s * s * t * numbers[0])
                            + (3 * s * t * t * numbers[2])
                            + (t * t * t * numbers[4])
                    );
                }

                current = numbers[4];
                numbers.Clear();
            }
            else if (command is 'M' or 'L' && numbers.Count == 2)
            {
                current = numbers[0];
                x.Add(current);
                numbers.Clear();
            }
        }

        return x.Count == 0 ? 0 : x.Max() - x.Min();
    }

    private static double Number(Match match, int group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"size:\s+([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSize();

    [GeneratedRegex("<path[^>]* d=\"([^\"]+)\"")]
    private static partial Regex PathData();

    [GeneratedRegex(@"[A-Za-z]|-?\d+(?:\.\d+)?")]
    private static partial Regex Token();
}

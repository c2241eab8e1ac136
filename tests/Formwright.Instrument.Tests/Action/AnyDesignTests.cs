using System.Globalization;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Findings;
using Formwright.Instrument.Action;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Action;

public sealed class AnyDesignTests
{
    private static readonly string[] Parts =
    [
        "neck.",
        "fingerboard.",
        "strings.",
        "action.",
        "saddle.",
        "load.",
        "tolerances.",
        "measured.",
        "dome.free",
        "dome.strung",
        "instrument.scale",
        "instrument.join_fret",
        "instrument.frets",
        "instrument.hand",
        "workboard.thickness",
    ];

    // Whatever a design file can say, each key anywhere within what it takes: no exception, and figures that are numbers.
    [Fact]
    public void Whatever_the_file_says_gives_figures_and_findings()
    {
        KeySpec[] keys =
        [
            .. DesignText
                .Keys()
                .Where(spec =>
                    Parts.Any(part => spec.Path.StartsWith(part, StringComparison.Ordinal))
                    && !spec.Path.Contains("[]", StringComparison.Ordinal)
                    && spec.Kind is not (KeyKind.Text or KeyKind.Lengths or KeyKind.Numbers)
                    && spec.Path is not "tolerances.builds"
                ),
        ];
        Assert.True(keys.Length > 90);
        string heron = File.ReadAllText(Repository.PathOf("examples", "heron.toml"));
        Random random = new(20261125);
        int computed = 0;
        for (int n = 0; n < 400; n++)
        {
            string text = heron;
            List<string> set = [];
            foreach (KeySpec spec in keys.Where(_ => random.NextDouble() < 0.12))
            {
                string value = ValueOf(spec, random);
                text = DesignEdit.Set(text, spec.Path, value);
                set.Add($"{spec.Path} = {value}");
            }

            if (DesignText.Parse(text, "any.toml").Design is not { } design)
            {
                continue;
            }

            computed++;
            string about = string.Join(", ", set);
            double peak = design.Dome.HeightMm;
            double scale = design.Identity.ScaleMm;
            NeckAndAction found;
            try
            {
                found = NeckAndAction.Of(
                    design,
                    (x, y) =>
                        Math.Max(0, peak - (6e-5 * Math.Pow(x - scale - 20, 2)) - (1e-4 * y * y)),
                    1000
                );
            }
            catch (Exception fault)
            {
                throw new InvalidOperationException(about, fault);
            }

            Assert.True(double.IsFinite(found.OnBoard.SaddleMm), about);
            Assert.True(double.IsFinite(found.Free.ProjectionMm), about);
            Assert.True(double.IsFinite(found.Strung.Action12Mm), about);
            Assert.True(double.IsFinite(found.ActionBass.CombinedUncertainty), about);
            Assert.InRange(found.Chance!.InBand, 0, 1);
            foreach (Finding finding in found.Findings)
            {
                Assert.DoesNotContain(
                    "NaN",
                    finding.Message + finding.Cure,
                    StringComparison.Ordinal
                );
            }

            foreach (Unknown unknown in Enum.GetValues<Unknown>())
            {
                SolveAnswer answer = found.Solver.For(unknown);
                Assert.True(answer.IsPossible || answer.Reason.Length > 0, $"{unknown}: {about}");
            }
        }

        // Some are refused with a diagnostic: one side of a pair without the other, least above most.
        Assert.True(computed > 60, $"{computed}");
    }

    private static string ValueOf(KeySpec spec, Random random) =>
        spec.Kind switch
        {
            KeyKind.Flag => random.Next(2) == 0 ? "false" : "true",
            KeyKind.Choice => $"\"{spec.Choices[random.Next(spec.Choices.Count)]}\"",
            KeyKind.Whole => random
                .Next((int)spec.Min, (int)Math.Min(spec.Max, 1_000_000) + 1)
                .ToString(CultureInfo.InvariantCulture),
            _ => Ends(spec, random).ToString("0.######", CultureInfo.InvariantCulture),
        };

    // The ends of the range as often as what lies between.
    private static double Ends(KeySpec spec, Random random) =>
        random.Next(4) switch
        {
            0 => spec.Min,
            1 => spec.Max,
            _ => spec.Min + (random.NextDouble() * (spec.Max - spec.Min)),
        };
}

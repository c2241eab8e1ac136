using System.Globalization;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Findings;
using Formwright.Packs;
using Formwright.Packs.Report;

namespace Formwright.Fuzz.Targets;

/// <summary>
/// Everything that is computed from a design that reads: a few keys of a model take any values that they admit, and the computation must
/// end in figures and findings, never in an exception, and every sentence must be whole. The mutated bytes are not used.
/// </summary>
internal sealed class StudyTarget : IFuzzTarget
{
    private static readonly KeySpec[] Keys =
    [
        .. DesignText.Keys().Where(spec => !spec.Path.Contains("[]", StringComparison.Ordinal)),
    ];

    public string Name => "study";

    public IReadOnlyList<byte[]> Seeds { get; } =
    [
        [],
    ];

    public IReadOnlyList<string> Pieces { get; } = [" "];

    public int MostChanges => 1;

    public string Try(byte[] input, Random random)
    {
        string text = DesignModels.TextOf(
            DesignModels.Names[random.Next(DesignModels.Names.Count)]
        );
        string changes = "";
        for (int i = random.Next(1, 7); i > 0; i--)
        {
            KeySpec key = Keys[random.Next(Keys.Length)];
            string value = ValueOf(key, random);
            text = DesignEdit.Set(text, key.Path, value);
            changes += $"{key.Path} = {value}; ";
        }

        DesignReading reading = DesignText.Parse(text, "f.toml");
        if (!reading.Succeeded)
        {
            return "faults";
        }

        try
        {
            Study study = Study.Of(reading.Design);
            foreach (Finding finding in study.Findings)
            {
                string said = $"{finding.Message} {finding.Cure} {finding.Source}";
                if (said.Contains("NaN", StringComparison.Ordinal) || said.Contains('∞'))
                {
                    throw new BrokenPromiseException($"{finding.Code} says: {said}");
                }
            }

            ReportJson.Write(study.Report);
            return study.IsStopped ? "stopped" : "built";
        }
#pragma warning disable CA1031 // Told again with the keys that led to it.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            string frame = fault.StackTrace?.Split('\n')[0].Trim() ?? "";
            throw new BrokenPromiseException(
                $"{changes}{fault.GetType().Name}: {fault.Message} {frame}"
            );
        }
    }

    private static string ValueOf(KeySpec key, Random random)
    {
        switch (key.Kind)
        {
            case KeyKind.Choice:
                return $"\"{key.Choices[random.Next(key.Choices.Count)]}\"";
            case KeyKind.Flag:
                return random.Next(2) == 0 ? "true" : "false";
            case KeyKind.Text:
                return "\"text\"";
            case KeyKind.Whole:
                return Math.Round(Within(key, random)).ToString(CultureInfo.InvariantCulture);
            case KeyKind.Lengths or KeyKind.Numbers:
                int count = random.Next(1, 6);
                return $"[{string.Join(", ", Enumerable.Range(0, count).Select(_ => Number(Within(key, random))))}]";
            default:
                return Number(Within(key, random));
        }
    }

    // Often the very ends, often near the default, else anywhere.
    private static double Within(KeySpec key, Random random)
    {
        bool hasDefault = double.TryParse(
            key.Default,
            CultureInfo.InvariantCulture,
            out double standard
        );
        double anywhere = key.Min + ((key.Max - key.Min) * random.NextDouble());
        return random.Next(5) switch
        {
            0 => key.Min,
            1 => key.Max,
            2 or 3 when hasDefault => Math.Clamp(
                standard * (0.5 + random.NextDouble()),
                key.Min,
                key.Max
            ),
            _ => anywhere,
        };
    }

    private static string Number(double value) =>
        value.ToString("0.######", CultureInfo.InvariantCulture);
}

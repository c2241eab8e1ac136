using System.CommandLine;
using System.Globalization;
using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Trace;
using Formwright.Trace.Aligning;
using Formwright.Trace.Files;

namespace Formwright.Cli.Commands;

/// <summary>What the commands that take a trace ask about it, and the trace that comes of the answers.</summary>
internal sealed class TraceInput
{
    private readonly Option<string> tolerance = Length("--tolerance", "option.tolerance");
    private readonly Option<string> smallest = Length("--smallest", "option.smallest");
    private readonly Option<string> sides = Choice<SideChoice>("--sides", "option.sides");
    private readonly Option<string> heel = Choice<HeelSide>("--heel", "option.heel");
    private readonly Option<string> bodyLength = Length("--body-length", "option.known-length");
    private readonly Option<string> width = Length("--largest-width", "option.known-width");
    private readonly Option<string> gap = Length("--gap", "option.gap");
    private readonly Option<string> unit = new("--unit")
    {
        Description = CliWords.Of["option.unit"],
        HelpName = "mm|cm|m|in|ft",
    };

    private readonly Option<string> centreline = new("--centreline")
    {
        Description = CliWords.Of["option.centreline"],
        HelpName = "X1,Y1,X2,Y2",
    };

    private readonly Option<string> layer = new("--layer")
    {
        Description = CliWords.Of["option.layer"],
        HelpName = CliWords.Of["argument.name"],
    };

    private readonly Option<bool> fromBehind = new("--from-behind")
    {
        Description = CliWords.Of["option.from-behind"],
    };

    public TraceInput()
    {
        unit.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && UnitMm(given) is null)
            {
                result.AddError(CliWords.Of.Format("usage.unit", given, Lengths.KnownUnits));
            }
        });
        centreline.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && LineOf(given) is null)
            {
                result.AddError(CliWords.Of["usage.centreline"]);
            }
        });
    }

    public static Argument<string> Argument() =>
        new(CliWords.Of["argument.file"]) { Description = CliWords.Of["argument.trace"] };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (
            Option option in (Option[])
                [
                    bodyLength,
                    width,
                    unit,
                    centreline,
                    heel,
                    fromBehind,
                    sides,
                    layer,
                    gap,
                    tolerance,
                    smallest,
                ]
        )
        {
            command.Add(option);
        }
    }

    /// <summary>The answers.</summary>
    public TraceOptions Options(ParseResult parsed)
    {
        TraceOptions usual = new();
        return usual with
        {
            ToleranceMm = Mm(parsed, tolerance) ?? usual.ToleranceMm,
            SmallestBumpMm = Mm(parsed, smallest) ?? usual.SmallestBumpMm,
            JoinGapMm = Mm(parsed, gap) ?? usual.JoinGapMm,
            Sides = Chosen<SideChoice>(parsed, sides),
            Heel = Chosen<HeelSide>(parsed, heel),
            IsSeenFromBehind = parsed.GetValue(fromBehind),
            Layer = parsed.GetValue(layer),
            MmPerUnit = parsed.GetValue(unit) is { } named ? UnitMm(named) : null,
            Centreline = parsed.GetValue(centreline) is { } line ? LineOf(line) : null,
            Known =
                Mm(parsed, bodyLength) is { } length
                    ? new KnownLength(KnownLengthKind.BodyLength, length)
                : Mm(parsed, width) is { } widest
                    ? new KnownLength(KnownLengthKind.LargestWidth, widest)
                : null,
        };
    }

    /// <summary>Reads a file and makes it fair; null after its diagnostics were told.</summary>
    public static TraceResult? Run(string path, TraceOptions options, Streams streams)
    {
        TraceReading reading = TraceReader.Load(path);
        if (!reading.Succeeded)
        {
            Tell(reading.Diagnostics, streams);
            return null;
        }

        using SlowNotice notice = new(streams, CliWords.Of["progress.computing"]);
        TraceOutcome outcome = Tracing.Run(reading.File, options);
        if (!outcome.Succeeded)
        {
            Tell(outcome.Diagnostics, streams);
            return null;
        }

        return outcome.Result;
    }

    private static void Tell(IReadOnlyList<Diagnostic> diagnostics, Streams streams)
    {
        foreach (Diagnostic diagnostic in diagnostics)
        {
            streams.Error.WriteLine(diagnostic);
        }
    }

    /// <summary>An option that takes a length above 0.</summary>
    internal static Option<string> Length(string name, string description)
    {
        Option<string> option = new(name)
        {
            Description = CliWords.Of[description],
            HelpName = "MM",
        };
        option.Validators.Add(result =>
        {
            if (
                result.Tokens is [{ Value: { } given }]
                && (Lengths.Read(given, out double mm) != LengthFault.None || !(mm > 0))
            )
            {
                result.AddError(CliWords.Of.Format("usage.length", name, given));
            }
        });
        return option;
    }

    internal static double? Mm(ParseResult parsed, Option<string> option) =>
        parsed.GetValue(option) is { } given
        && Lengths.Read(given, out double mm) == LengthFault.None
            ? mm
            : null;

    private static Option<string> Choice<T>(string name, string description)
        where T : struct, Enum
    {
        string[] words = Words<T>();
        Option<string> option = new(name)
        {
            Description = CliWords.Of[description],
            HelpName = string.Join('|', words),
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !words.Contains(given))
            {
                result.AddError(
                    CliWords.Of.Format("usage.choice", name, given, string.Join(", ", words))
                );
            }
        });
        return option;
    }

    private static T Chosen<T>(ParseResult parsed, Option<string> option)
        where T : struct, Enum =>
        parsed.GetValue(option) is { } given
            ? Enum.GetValues<T>()[Array.IndexOf(Words<T>(), given)]
            : default;

    private static string[] Words<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Choices.NameOf)];

    private static double? UnitMm(string name) =>
        name.Any(char.IsDigit) || Lengths.Read($"1 {name}", out double mm) != LengthFault.None
            ? null
            : mm;

    private static Centreline? LineOf(string text)
    {
        double[] values = new double[4];
        string[] parts = text.Split(',');
        if (parts.Length != 4)
        {
            return null;
        }

        for (int i = 0; i < 4; i++)
        {
            if (
                !double.TryParse(
                    parts[i],
                    NumberStyles.Float,
                    CultureInfo.InvariantCulture,
                    out values[i]
                ) || !double.IsFinite(values[i])
            )
            {
                return null;
            }
        }

        Centreline line = new(new Point(values[0], values[1]), new Point(values[2], values[3]));
        return line.From.DistanceTo(line.To) > 0 ? line : null;
    }
}

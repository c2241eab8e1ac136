using System.CommandLine;
using System.Globalization;
using Formwright.Design;
using Formwright.Trace.Comparing;

namespace Formwright.Cli.Commands;

/// <summary><c>adapt DESIGN --out NEW</c>: the same outline at another body length, other widths or another scale.</summary>
internal static class AdaptCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Option<string> target = new("--out")
        {
            Description = CliWords.Of["option.out-design"],
            HelpName = CliWords.Of["argument.file"],
            Required = true,
        };
        Option<string> scale = TraceInput.Length("--scale", "option.adapt-scale");
        Option<string> length = TraceInput.Length("--body-length", "option.adapt-length");
        Option<string> upper = TraceInput.Length("--upper-bout", "option.adapt-upper");
        Option<string> waist = TraceInput.Length("--waist", "option.adapt-waist");
        Option<string> lower = TraceInput.Length("--lower-bout", "option.adapt-lower");
        Option<string> sheets = FairCommand.SheetsOption();
        Option<bool> json = FairCommand.JsonOption();
        Option<bool> force = new("--force") { Description = CliWords.Of["option.force"] };
        Command command = new("adapt", CliWords.Of["command.adapt"])
        {
            file,
            target,
            scale,
            length,
            upper,
            waist,
            lower,
            sheets,
            json,
            force,
        };
        command.SetAction(parsed =>
        {
            string to = parsed.GetValue(target)!;
            string? pdf = parsed.GetValue(sheets);
            string path = parsed.GetValue(file)!;
            if (
                !OutputFile.MayWrite(parsed.GetValue(force), streams, to, pdf)
                || DesignFile.Read(path, streams) is not { } reading
            )
            {
                return (int)ExitStatus.WrongInput;
            }

            double? newScale = TraceInput.Mm(parsed, scale);
            OutlineChange change = new(
                newScale / reading.Design!.Identity.ScaleMm ?? 1,
                TraceInput.Mm(parsed, length),
                TraceInput.Mm(parsed, upper),
                TraceInput.Mm(parsed, waist),
                TraceInput.Mm(parsed, lower)
            );
            string text = change.Of(reading.Text, reading.Design.Outline);
            if (newScale is { } mm)
            {
                text = DesignEdit.Set(
                    text,
                    "instrument.scale",
                    mm.ToString("0.###", CultureInfo.InvariantCulture)
                );
            }

            return (int)Run(path, reading, to, text, pdf, parsed.GetValue(json), streams);
        });
        return command;
    }

    private static ExitStatus Run(
        string path,
        DesignReading reading,
        string target,
        string text,
        string? sheets,
        bool json,
        Streams streams
    )
    {
        DesignReading changed = DesignText.Parse(text, target);
        if (!changed.Succeeded)
        {
            foreach (Design.Reading.Diagnostic diagnostic in changed.Diagnostics)
            {
                streams.Error.WriteLine(diagnostic);
            }

            return ExitStatus.WrongInput;
        }

        OutlineFile? before = OutlineFile.Of(path, reading, streams);
        OutlineFile? after = before is null ? null : OutlineFile.Of(target, changed, streams);
        if (before is null || after is null)
        {
            return ExitStatus.Stopped;
        }

        DesignFile.Write(target, text, replace: true);
        ExitStatus status = CompareCommand.Run(before, after, sheets, json, streams);
        if (!json)
        {
            streams.Out.WriteLine(
                CliWords.Of[
                    reading.Design!.Outline.Curve is null ? "adapt.kept-fair" : "adapt.kept-curve"
                ]
            );
            streams.Out.WriteLine(CliWords.Of.Format("new.done", target));
        }

        return status;
    }
}

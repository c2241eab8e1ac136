using System.CommandLine;
using Formwright.Design;
using Formwright.Sheets.Trace;
using Formwright.Trace;

namespace Formwright.Cli.Commands;

/// <summary><c>import TRACE --out DESIGN</c>: makes a design of a tracing.</summary>
internal static class ImportCommand
{
    private const int LongestName = 60;

    public static Command Make(Streams streams)
    {
        Argument<string> file = TraceInput.Argument();
        Option<string> design = new("--out")
        {
            Description = CliWords.Of["option.out-design"],
            HelpName = CliWords.Of["argument.file"],
            Required = true,
        };
        Option<string> like = new("--like")
        {
            Description = CliWords.Of["option.like"],
            HelpName = CliWords.Of["argument.file"],
        };
        Option<string> sheets = FairCommand.SheetsOption();
        Option<bool> json = FairCommand.JsonOption();
        Option<bool> force = new("--force") { Description = CliWords.Of["option.force"] };
        TraceInput input = new();
        Command command = new("import", CliWords.Of["command.import"])
        {
            file,
            design,
            like,
            sheets,
            json,
            force,
        };
        input.AddTo(command);
        command.SetAction(parsed =>
            (int)Run(
                new Wanted(
                    parsed.GetValue(file)!,
                    parsed.GetValue(design)!,
                    parsed.GetValue(like),
                    parsed.GetValue(sheets),
                    parsed.GetValue(json),
                    parsed.GetValue(force)
                ),
                input.Options(parsed),
                streams
            )
        );
        return command;
    }

    private sealed record Wanted(
        string File,
        string Design,
        string? Like,
        string? Sheets,
        bool Json,
        bool Force
    );

    private static ExitStatus Run(Wanted wanted, TraceOptions options, Streams streams)
    {
        if (!OutputFile.MayWrite(wanted.Force, streams, wanted.Design, wanted.Sheets))
        {
            return ExitStatus.WrongInput;
        }

        DesignReading? like = null;
        if (wanted.Like is not null)
        {
            like = DesignFile.Read(wanted.Like, streams);
            if (like is null)
            {
                return ExitStatus.WrongInput;
            }
        }

        if (TraceInput.Run(wanted.File, options, streams) is not { } trace)
        {
            return ExitStatus.WrongInput;
        }

        string name = Path.GetFileNameWithoutExtension(wanted.File);
        if (!TracedDesign.CanBeWritten(trace))
        {
            streams.Error.WriteLine(CliWords.Of.Format("import.no-guitar", wanted.File));
            return ExitStatus.WrongInput;
        }

        string model = TracedDesign.NearestModel(trace.Features.BodyLengthMm);
        string text = like?.Text ?? StartingFile.Text(model);
        if (like is null)
        {
            string title = name.Length > LongestName ? name[..LongestName] : name;
            text = DesignEdit.Set(text, "instrument.name", Quoted(title));
        }

        DesignFile.Write(wanted.Design, TracedDesign.Text(text, trace), wanted.Force);
        if (wanted.Sheets is not null)
        {
            OutputFile.Sheets(wanted.Sheets, TraceSheets.Of(trace, name));
        }

        FairCommand.Tell(trace, wanted.Json, streams);
        if (!wanted.Json)
        {
            streams.Out.WriteLine(
                CliWords.Of[trace.Plain is null ? "import.curve" : "import.plain"]
            );
            streams.Out.WriteLine(CliWords.Of.Format("new.done", wanted.Design));
            if (like is null)
            {
                streams.Out.WriteLine(CliWords.Of.Format("import.rest", model));
            }
        }

        return ExitStatus.Done;
    }

    private static string Quoted(string text) =>
        $"\"{string.Concat(text.Where(c => !char.IsControl(c) && c is not ('"' or '\\')))}\"";
}

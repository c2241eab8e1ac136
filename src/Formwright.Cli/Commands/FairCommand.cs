using System.CommandLine;
using Formwright.Packs.Report;
using Formwright.Sheets.Trace;
using Formwright.Trace;

namespace Formwright.Cli.Commands;

/// <summary><c>fair TRACE</c>: tells the fair outline of a tracing and its bumps, and writes no design.</summary>
internal static class FairCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = TraceInput.Argument();
        Option<string> sheets = SheetsOption();
        Option<bool> json = JsonOption();
        Option<bool> force = new("--force") { Description = CliWords.Of["option.force"] };
        TraceInput input = new();
        Command command = new("fair", CliWords.Of["command.fair"]) { file, sheets, json, force };
        input.AddTo(command);
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(file)!,
                input.Options(parsed),
                parsed.GetValue(sheets),
                parsed.GetValue(json),
                parsed.GetValue(force),
                streams
            )
        );
        return command;
    }

    public static Option<string> SheetsOption() =>
        new("--sheets") { Description = CliWords.Of["option.sheets"], HelpName = "PDF" };

    public static Option<bool> JsonOption() =>
        new("--json") { Description = CliWords.Of["option.json"] };

    /// <summary>Prints what a trace came to.</summary>
    public static void Tell(TraceResult trace, bool json, Streams streams)
    {
        if (json)
        {
            streams.Out.Write(ReportJson.Write(new TraceDocument(TraceReport.Of(trace), null)));
        }
        else
        {
            TraceTexts.Write(streams.Out, trace);
        }
    }

    private static ExitStatus Run(
        string file,
        TraceOptions options,
        string? sheets,
        bool json,
        bool force,
        Streams streams
    )
    {
        if (
            !OutputFile.MayWrite(force, streams, sheets)
            || TraceInput.Run(file, options, streams) is not { } trace
        )
        {
            return ExitStatus.WrongInput;
        }

        Tell(trace, json, streams);
        if (sheets is not null)
        {
            string name = Path.GetFileNameWithoutExtension(file);
            OutputFile.Sheets(sheets, TraceSheets.Of(trace, name));
        }

        return ExitStatus.Done;
    }
}

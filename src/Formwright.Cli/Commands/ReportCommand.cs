using System.CommandLine;
using Formwright.Packs;
using Formwright.Packs.Report;
using Formwright.Trace;

namespace Formwright.Cli.Commands;

/// <summary><c>report FILE</c>: every computed figure of a design, or of a tracing, as JSON on standard output.</summary>
internal static class ReportCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Command command = new("report", CliWords.Of["command.report"]) { file };
        command.SetAction(parsed => (int)Run(parsed.GetValue(file)!, streams));
        return command;
    }

    private static ExitStatus Run(string file, Streams streams)
    {
        if (!OutlineFile.IsDesign(file))
        {
            if (TraceInput.Run(file, new TraceOptions(), streams) is not { } trace)
            {
                return ExitStatus.WrongInput;
            }

            FairCommand.Tell(trace, json: true, streams);
            return ExitStatus.Done;
        }

        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        Study study = DesignFile.Study(reading, streams);
        streams.Out.Write(ReportJson.Write(study.Report));
        return study.IsStopped ? ExitStatus.Stopped : ExitStatus.Done;
    }
}

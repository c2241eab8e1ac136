using System.CommandLine;
using Formwright.Packs;

namespace Formwright.Cli.Commands;

/// <summary><c>check FILE…</c>: tells everything that is wrong with designs, and writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string[]> files = new(CliWords.Of["argument.file"])
        {
            Description = CliWords.Of["argument.designs"],
            Arity = ArgumentArity.OneOrMore,
        };
        Command command = new("check", CliWords.Of["command.check"]) { files };
        command.SetAction(parsed =>
            (int)parsed.GetValue(files)!.Select(file => Check(file, streams)).ToList().Max()
        );
        return command;
    }

    private static ExitStatus Check(string file, Streams streams)
    {
        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        Study study = DesignFile.Study(reading, streams);
        FindingList.Write(streams.Out, file, reading, study.AllFindings);
        return study.IsStopped ? ExitStatus.Stopped : ExitStatus.Done;
    }
}

using System.CommandLine;
using Formwright.Design;
using Formwright.Packs;

namespace Formwright.Cli.Commands;

/// <summary><c>pack FILE --out FOLDER</c>: writes the folder of everything for one design, or nothing.</summary>
internal static class PackCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Option<string> folder = new("--out")
        {
            Description = CliWords.Of["option.out"],
            HelpName = CliWords.Of["argument.folder"],
            Required = true,
        };
        Command command = new("pack", CliWords.Of["command.pack"]) { file, folder };
        command.SetAction(parsed =>
            (int)Run(parsed.GetValue(file)!, parsed.GetValue(folder)!, streams)
        );
        return command;
    }

    private static ExitStatus Run(string file, string folder, Streams streams)
    {
        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        Study study = DesignFile.Study(reading, streams);
        if (study.Findings.Count > 0)
        {
            FindingList.Write(
                study.IsStopped ? streams.Error : streams.Out,
                file,
                reading,
                study.Findings
            );
        }

        if (study.IsStopped)
        {
            streams.Error.WriteLine(CliWords.Of["pack.stopped"]);
            return ExitStatus.Stopped;
        }

        PackResult result = Write(study, reading, folder, streams);
        if (result.Manifest is not { } manifest)
        {
            streams.Error.WriteLine(result.Fault);
            return ExitStatus.WrongInput;
        }

        streams.Out.WriteLine(CliWords.Of.Format("pack.done", folder, manifest.Files.Count));
        return ExitStatus.Done;
    }

    private static PackResult Write(
        Study study,
        DesignReading reading,
        string folder,
        Streams streams
    )
    {
        using Interruption interruption = new();
        using SlowNotice notice = new(streams, CliWords.Of["progress.packing"]);
        return PackWriter.Write(
            study,
            reading.Text,
            folder,
            new Told(step =>
                notice.Say(CliWords.Of.Format("progress.file", step.Done, step.Total, step.Path))
            ),
            interruption.Token
        );
    }

    // Tells at once, on the thread that wrote the file.
    private sealed class Told(Action<PackProgress> tell) : IProgress<PackProgress>
    {
        public void Report(PackProgress value) => tell(value);
    }
}

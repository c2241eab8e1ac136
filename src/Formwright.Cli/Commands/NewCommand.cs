using System.CommandLine;
using Formwright.Design;
using Formwright.Design.Reading;

namespace Formwright.Cli.Commands;

/// <summary><c>new FILE --model heron</c>: writes a starting file.</summary>
internal static class NewCommand
{
    private const string Standard = "heron";

    public static Command Make(Streams streams)
    {
        Argument<string> file = new(CliWords.Of["argument.file"])
        {
            Description = CliWords.Of["argument.new-file"],
        };
        Option<string> model = new("--model")
        {
            Description = CliWords.Of.Format("option.model", Standard),
            HelpName = string.Join('|', DesignModels.Names),
            DefaultValueFactory = _ => Standard,
        };
        model.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !DesignModels.Names.Contains(given))
            {
                string names = string.Join(", ", DesignModels.Names);
                result.AddError(
                    Nearest.To(given, DesignModels.Names) is { } near
                        ? CliWords.Of.Format("usage.model-near", given, names, near)
                        : CliWords.Of.Format("usage.model", given, names)
                );
            }
        });
        Option<bool> all = new("--all") { Description = CliWords.Of["option.all"] };
        Option<bool> force = new("--force") { Description = CliWords.Of["option.force"] };
        Command command = new("new", CliWords.Of["command.new"]) { file, model, all, force };
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(file)!,
                StartingFile.Text(parsed.GetValue(model)!, parsed.GetValue(all)),
                parsed.GetValue(force),
                streams
            )
        );
        return command;
    }

    private static ExitStatus Run(string path, string text, bool force, Streams streams)
    {
        if (Directory.Exists(path))
        {
            streams.Error.WriteLine(CliWords.Of.Format("new.folder", path));
            return ExitStatus.WrongInput;
        }

        if (!force && File.Exists(path))
        {
            streams.Error.WriteLine(CliWords.Of.Format("new.exists", path));
            return ExitStatus.WrongInput;
        }

        DesignFile.Write(path, text, force);
        streams.Out.WriteLine(CliWords.Of.Format("new.done", path));
        return ExitStatus.Done;
    }
}

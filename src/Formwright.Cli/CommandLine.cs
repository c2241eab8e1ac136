using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using Formwright.Cli.Commands;
using Formwright.Words;

namespace Formwright.Cli;

/// <summary>The commands, and the one place where whatever goes wrong becomes a line for the maker.</summary>
public static class CommandLine
{
    private const string LanguageName = "--language";

    /// <summary>Runs a command.</summary>
    /// <param name="args">The arguments after the program's name.</param>
    /// <param name="streams">Where it writes.</param>
    /// <returns>The exit status.</returns>
    public static int Run(IReadOnlyList<string> args, Streams streams)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(streams);
        using Language spoken = Language.Use(LanguageOf(args));
        ExitStatus status;
        try
        {
            status = Invoke(args, streams);
            streams.Out.Flush();
        }
#pragma warning disable CA1031 // The top: nothing may reach a maker as a stack trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            streams.Error.WriteLine(FaultLine.Of(fault));
            status = ExitStatus.OutsideFailure;
        }

        return (int)status;
    }

    private static ExitStatus Invoke(IReadOnlyList<string> args, Streams streams)
    {
        RootCommand root = Root(streams);
        ParserConfiguration parser = new() { ResponseFileTokenReplacer = null };
        ParseResult parsed = root.Parse(args, parser);
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpAction and not HelpText)
        {
            return UsageFault.Tell(parsed, streams);
        }

        // The page is served until it is told to stop; every other command ends by itself.
        return (ExitStatus)
            parsed.Invoke(
                new InvocationConfiguration
                {
                    EnableDefaultExceptionHandler = false,
                    Output = streams.Out,
                    Error = streams.Error,
                }
            );
    }

    private static RootCommand Root(Streams streams)
    {
        Option<string> language = new(LanguageName)
        {
            Description = CliWords.Of["option.language"],
            HelpName = string.Join('|', Language.Names),
            Recursive = true,
        };
        language.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !Language.Names.Contains(given))
            {
                result.AddError(CliWords.Of.Format("usage.language", given));
            }
        });
        RootCommand root = new(CliWords.Of["command.root"])
        {
            NewCommand.Make(streams),
            CheckCommand.Make(streams),
            ReportCommand.Make(streams),
            SolveCommand.Make(streams),
            BoardCheckCommand.Make(streams),
            TapCommand.Make(streams),
            PackCommand.Make(streams),
            JigCommand.Make(streams),
            MouldCheckCommand.Make(streams),
            ImportCommand.Make(streams),
            FairCommand.Make(streams),
            CompareCommand.Make(streams),
            AdaptCommand.Make(streams),
            ServeCommand.Make(streams),
        };
        root.Add(language);
        root.SetAction(
            (_, stop) => ServeCommand.Run(ServeCommand.UsualFolder, null, true, null, streams, stop)
        );
        foreach (Option option in root.Options)
        {
            if (option is HelpOption help)
            {
                help.Description = CliWords.Of["option.help"];
                help.Action = new HelpText(streams.Out);
            }
            else if (option is VersionOption version)
            {
                version.Description = CliWords.Of["option.version"];
            }
        }

        return root;
    }

    // Looked at before all else, since help and faults of usage speak it too. A wrong one is told by the option itself.
    private static string LanguageOf(IReadOnlyList<string> args)
    {
        for (int i = 0; i < args.Count; i++)
        {
            string? given =
                args[i] == LanguageName && i + 1 < args.Count ? args[i + 1]
                : args[i].StartsWith(LanguageName + "=", StringComparison.Ordinal)
                    ? args[i][(LanguageName.Length + 1)..]
                : null;
            if (given is not null && Language.Names.Contains(given))
            {
                return given;
            }
        }

        string persons = CultureInfo.CurrentUICulture.TwoLetterISOLanguageName;
        return Language.Names.Contains(persons) ? persons : "en";
    }
}

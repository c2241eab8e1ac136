using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Formwright.Cli;

/// <summary>Help in the maker's language, from the commands themselves.</summary>
public sealed class HelpText(TextWriter to) : SynchronousCommandLineAction
{
    private const int Width = 92;

    /// <summary>Faults of usage don't matter when help is asked for.</summary>
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        ArgumentNullException.ThrowIfNull(parseResult);
        Write(parseResult.CommandResult.Command, to);
        return (int)ExitStatus.Done;
    }

    /// <summary>Writes what a command does and takes.</summary>
    public static void Write(Command command, TextWriter to)
    {
        ArgumentNullException.ThrowIfNull(command);
        ArgumentNullException.ThrowIfNull(to);
        to.WriteLine(command.Description);
        to.WriteLine();
        to.WriteLine($"{CliWords.Of["help.usage"]} {UsageOf(command)}");
        Option[] options = [.. OptionsOf(command)];
        int column = command
            .Subcommands.Select(each => each.Name.Length)
            .Concat(command.Arguments.Select(each => each.Name.Length))
            .Concat(options.Select(each => LabelOf(each).Length))
            .Max();
        Section(to, "help.commands", command.Subcommands, each => each.Name, column);
        Section(to, "help.arguments", command.Arguments, each => each.Name, column);
        Section(to, "help.options", options, LabelOf, column);
        if (command.Subcommands.Count > 0)
        {
            to.WriteLine();
            to.WriteLine(CliWords.Of["help.status"]);
        }
    }

    /// <summary>How a command is called, on one line.</summary>
    public static string UsageOf(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        IEnumerable<string> parts =
        [
            "formwright",
            .. command is RootCommand ? [CliWords.Of["help.command"]] : (string[])[command.Name],
            .. command.Arguments.Select(each =>
                each.Arity.MaximumNumberOfValues > 1 ? $"{each.Name}…" : each.Name
            ),
            .. command.Options.Where(each => each.Required).Select(LabelOf),
            .. command
                .Options.Where(each =>
                    !each.Required
                    && each is not HelpOption and not VersionOption
                    && !each.Recursive
                )
                .Select(each => $"[{LabelOf(each)}]"),
        ];
        return string.Join(' ', parts);
    }

    private static IEnumerable<Option> OptionsOf(Command command) =>
        command.Options.Concat(
            command
                .Parents.OfType<Command>()
                .SelectMany(each => each.Options)
                .Where(each => each.Recursive)
        );

    private static string LabelOf(Option option) =>
        string.IsNullOrEmpty(option.HelpName) ? option.Name : $"{option.Name} {option.HelpName}";

    private static void Section<T>(
        TextWriter to,
        string title,
        IEnumerable<T> symbols,
        Func<T, string> label,
        int column
    )
        where T : Symbol
    {
        bool first = true;
        foreach (T symbol in symbols)
        {
            if (first)
            {
                to.WriteLine();
                to.WriteLine(CliWords.Of[title]);
                first = false;
            }

            string start = "  " + label(symbol).PadRight(column + 2);
            foreach (string line in Wrapped.Lines(symbol.Description ?? "", Width - start.Length))
            {
                to.WriteLine((start + line).TrimEnd());
                start = new string(' ', start.Length);
            }
        }
    }
}

using System.CommandLine;
using System.CommandLine.Parsing;
using Formwright.Design.Reading;

namespace Formwright.Cli;

/// <summary>Says what is wrong with a command line, in the maker's language.</summary>
internal static class UsageFault
{
    public static ExitStatus Tell(ParseResult parsed, Streams streams)
    {
        Command command = parsed.CommandResult.Command;
        foreach (string line in Lines(parsed, command).Distinct())
        {
            streams.Error.WriteLine(line);
        }

        streams.Error.WriteLine($"{CliWords.Of["help.usage"]} {HelpText.UsageOf(command)}");
        return ExitStatus.WrongInput;
    }

    private static IEnumerable<string> Lines(ParseResult parsed, Command command)
    {
        if (parsed.UnmatchedTokens.Count > 0)
        {
            foreach (string token in parsed.UnmatchedTokens)
            {
                yield return Unknown(token, command);
            }

            yield break;
        }

        foreach (ParseError error in parsed.Errors)
        {
            yield return error.SymbolResult switch
            {
                ArgumentResult { Tokens.Count: 0, Parent: OptionResult option } =>
                    CliWords.Of.Format("usage.no-value", option.Option.Name),
                ArgumentResult { Tokens.Count: 0 } argument => CliWords.Of.Format(
                    "usage.missing",
                    argument.Argument.Name
                ),
                OptionResult { Tokens.Count: 0, Implicit: false } option => CliWords.Of.Format(
                    "usage.no-value",
                    option.Option.Name
                ),
                OptionResult { Tokens.Count: 0 } option => CliWords.Of.Format(
                    "usage.missing",
                    option.Option.Name
                ),
                OptionResult { Tokens.Count: > 1 } option => CliWords.Of.Format(
                    "usage.once",
                    option.Option.Name
                ),
                _ => MissingOr(error, command),
            };
        }
    }

    // A command that lacks a required option or argument reports it on itself; our own validators give whole sentences.
    private static string MissingOr(ParseError error, Command command)
    {
        Option? lacking = command.Options.FirstOrDefault(option =>
            option.Required && error.Message.Contains(option.Name, StringComparison.Ordinal)
        );
        return lacking is not null && error.SymbolResult is CommandResult
            ? CliWords.Of.Format("usage.missing", lacking.Name)
            : error.Message;
    }

    private static string Unknown(string token, Command command)
    {
        bool isOption = token.StartsWith('-');
        token = isOption ? token.Split('=', 2)[0] : token;
        IEnumerable<string> names = isOption
            ? command.Options.Select(option => option.Name)
            : command.Subcommands.Select(each => each.Name);
        string shown = token.Length > 60 ? token[..60] + "…" : token;
        return Nearest.To(token, names) is { } near
            ? CliWords.Of.Format("usage.unknown-near", shown, near)
            : CliWords.Of.Format("usage.unknown", shown);
    }
}

using System.Reflection;
using System.Text.RegularExpressions;

namespace Formwright.Cli;

/// <summary>One plain line for whatever went wrong outside the design.</summary>
internal static partial class FaultLine
{
    // Linux and Windows numbers of "no space left".
    private const int NoSpace = 28;
    private const int DiskFull = unchecked((int)0x80070070);

    public static string Of(Exception fault)
    {
        fault = fault is AggregateException { InnerExceptions: [{ } first, ..] } ? first : fault;
        string detail = OneLine(fault.Message);
        string path = Quoted().Match(detail) is { Success: true } match
            ? match.Groups["path"].Value
            : "";
        return fault switch
        {
            OperationCanceledException => CliWords.Of["fault.cancelled"],
            UnauthorizedAccessException => CliWords.Of.Format("fault.permission", path),
            DirectoryNotFoundException => CliWords.Of.Format("fault.no-folder", path),
            FileNotFoundException => CliWords.Of.Format("fault.no-file", path),
            PathTooLongException => CliWords.Of["fault.long-path"],
            IOException { HResult: NoSpace or DiskFull } => CliWords.Of["fault.full"],
            IOException => CliWords.Of.Format("fault.disk", detail),
            _ => CliWords.Of.Format(
                "fault.ours",
                Version,
                fault.GetType().Name,
                Origin(fault),
                detail
            ),
        };
    }

    private static string Version =>
        typeof(FaultLine)
            .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()
            ?.InformationalVersion
        ?? "";

    private static string Origin(Exception fault) =>
        fault.TargetSite is { } method ? $"{method.DeclaringType?.Name}.{method.Name}" : "?";

    private static string OneLine(string text) => text.ReplaceLineEndings(" ").Trim();

    [GeneratedRegex("'(?<path>[^']+)'")]
    private static partial Regex Quoted();
}

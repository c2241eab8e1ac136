using System.CommandLine;
using Formwright.Packs.Report;
using Formwright.Sheets.Trace;
using Formwright.Trace;
using Formwright.Trace.Comparing;

namespace Formwright.Cli.Commands;

/// <summary><c>compare FIRST SECOND</c>: two outlines beside each other, of designs or tracings.</summary>
internal static class CompareCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> first = new("FIRST") { Description = CliWords.Of["argument.first"] };
        Argument<string> second = new("SECOND") { Description = CliWords.Of["argument.second"] };
        Option<string> sheets = FairCommand.SheetsOption();
        Option<bool> json = FairCommand.JsonOption();
        Option<bool> force = new("--force") { Description = CliWords.Of["option.force"] };
        TraceInput input = new();
        Command command = new("compare", CliWords.Of["command.compare"])
        {
            first,
            second,
            sheets,
            json,
            force,
        };
        input.AddTo(command);
        command.SetAction(parsed =>
        {
            string one = parsed.GetValue(first)!;
            string other = parsed.GetValue(second)!;
            string? pdf = parsed.GetValue(sheets);
            if (!OutputFile.MayWrite(parsed.GetValue(force), streams, pdf))
            {
                return (int)ExitStatus.WrongInput;
            }

            TraceOptions options = input.Options(parsed);
            OutlineFile? a = OutlineFile.Read(one, options, streams);
            OutlineFile? b = a is null ? null : OutlineFile.Read(other, options, streams);
            return a is null || b is null
                ? (int)ExitStatus.WrongInput
                : (int)Run(a, b, pdf, parsed.GetValue(json), streams);
        });
        return command;
    }

    /// <summary>Tells and draws two outlines.</summary>
    public static ExitStatus Run(
        OutlineFile first,
        OutlineFile second,
        string? sheets,
        bool json,
        Streams streams
    )
    {
        OutlineComparison comparison = OutlineComparison.Of(first.Outline, second.Outline);
        if (json)
        {
            streams.Out.Write(
                ReportJson.Write(new TraceDocument(null, CompareReport.Of(comparison)))
            );
        }
        else
        {
            Tell(streams.Out, comparison);
        }

        if (sheets is not null)
        {
            OutputFile.Sheets(
                sheets,
                TraceSheets.Of(first.Name, first.Outline, second.Name, second.Outline, comparison)
            );
        }

        return ExitStatus.Done;
    }

    private static void Tell(TextWriter to, OutlineComparison comparison)
    {
        to.WriteLine(
            CliWords.Of.Format(
                "compare.distance",
                comparison.LargestMm,
                comparison.LargestAtUMm,
                comparison.RmsMm
            )
        );
        to.WriteLine(
            CliWords.Of.Format(
                "compare.area",
                comparison.AreaMm2 / 100,
                comparison.OtherAreaMm2 / 100,
                comparison.AreaDifferenceMm2 / 100
            )
        );
        to.WriteLine(CliWords.Of.Format("compare.character", 100 * comparison.Change.RmsShare));
        to.WriteLine(CliWords.Of["compare.head"]);
        foreach (WidthPair row in comparison.Widths)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    "compare.row",
                    row.UMm,
                    row.WidthMm,
                    row.OtherWidthMm,
                    row.DifferenceMm
                )
            );
        }
    }
}

using System.CommandLine;
using Formwright.Jigs.BoardChecks;
using Formwright.Packs;
using Formwright.Sheets;
using Formwright.Sheets.Tooling;
using Formwright.Writers;

namespace Formwright.Cli.Commands;

/// <summary><c>board-check FILE --measured GAPS</c>: what is wrong with a workboard, what to do, and what follows if it is left.</summary>
internal static class BoardCheckCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Option<string> measured = new("--measured")
        {
            Description = CliWords.Of["option.measured"],
            HelpName = "nut=1.9/1.6,fret5=1.1",
            Required = true,
        };
        Option<string> sheet = new("--sheet")
        {
            Description = CliWords.Of["option.sheet"],
            HelpName = "shim.pdf",
        };
        Command command = new("board-check", CliWords.Of["command.board-check"])
        {
            file,
            measured,
            sheet,
        };
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(file)!,
                parsed.GetValue(measured)!,
                parsed.GetValue(sheet),
                streams
            )
        );
        return command;
    }

    private static ExitStatus Run(string file, string measured, string? sheet, Streams streams)
    {
        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        Study study = Study.Of(reading.Design!, builds: 0);
        if (study is not { Guitar: { } guitar, Tooling: { } tooling, Action: { } action })
        {
            FindingList.Write(streams.Out, file, reading, study.Findings);
            return ExitStatus.Stopped;
        }

        MeasuredGaps gaps = MeasuredGaps.Parse(measured, tooling.Workboard.GapTable);
        foreach (string fault in gaps.Faults)
        {
            streams.Error.WriteLine($"--measured: {fault}");
        }

        if (gaps.Faults.Count > 0)
        {
            return ExitStatus.WrongInput;
        }

        BoardCheck check = BoardCheck.Of(guitar, tooling.Workboard, action.Model, gaps.Gaps);
        Tell(check, streams.Out);
        streams.Out.WriteLine();
        FindingList.Write(streams.Out, file, reading, check.Findings);
        IReadOnlyList<NamedSheet> sheets = ShimSheet.Of(guitar, check);
        if (sheet is not null && sheets.Count > 0)
        {
            using FileStream to = File.Create(sheet);
            PdfWriter.Write(to, [.. sheets.Select(named => named.Sheet.Draw())]);
            streams.Out.WriteLine(CliWords.Of.Format("board-check.drawn", sheet));
        }

        return check.Passes ? ExitStatus.Done : ExitStatus.Stopped;
    }

    private static void Tell(BoardCheck check, TextWriter to)
    {
        foreach (CheckedGap row in check.Rows)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    "board-check.row",
                    row.Row.PlaceName,
                    row.Row.GapMm,
                    row.Row.ToleranceMm,
                    row.Found.BassMm,
                    row.Found.TrebleMm
                )
            );
        }

        to.WriteLine();
        Taper(to, "board-check.shim", check.Shim);
        Taper(to, "board-check.plane", check.Plane);
        if (check.BodyWedgeMm is { } wedge)
        {
            to.WriteLine(CliWords.Of.Format("board-check.wedge", wedge));
        }

        if (check.Left is { } left)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    "board-check.left-saddle",
                    left.SaddleBassMm,
                    left.SaddleTrebleMm,
                    left.PlannedSaddleBassMm,
                    left.PlannedSaddleTrebleMm
                )
            );
            to.WriteLine(
                CliWords.Of.Format(
                    "board-check.left-action",
                    left.ActionBassMm,
                    left.ActionTrebleMm,
                    left.PlannedActionBassMm,
                    left.PlannedActionTrebleMm
                )
            );
        }
    }

    private static void Taper(TextWriter to, string key, Taper? taper)
    {
        if (taper is null)
        {
            return;
        }

        to.WriteLine(CliWords.Of[key]);
        foreach (TaperRow row in taper.Rows)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    "board-check.taper",
                    row.PlaceName,
                    row.XMm,
                    row.BassMm,
                    row.TrebleMm
                )
            );
        }
    }
}

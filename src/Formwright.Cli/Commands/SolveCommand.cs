using System.CommandLine;
using System.Globalization;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Instrument.Action;
using Formwright.Packs;

namespace Formwright.Cli.Commands;

/// <summary><c>solve FILE --for UNKNOWN</c>: the one figure that the others ask for, the chain that follows, and with <c>--write</c> the file.</summary>
internal static class SolveCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        string[] unknowns = [.. Enum.GetValues<Unknown>().Select(Choices.NameOf)];
        Option<string> wanted = new("--for")
        {
            Description = CliWords.Of["option.for"],
            HelpName = string.Join('|', unknowns),
            Required = true,
        };
        wanted.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !unknowns.Contains(given))
            {
                result.AddError(
                    CliWords.Of.Format("usage.for", given, string.Join(", ", unknowns))
                );
            }
        });
        Option<bool> write = new("--write") { Description = CliWords.Of["option.write"] };
        Command command = new("solve", CliWords.Of["command.solve"]) { file, wanted, write };
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(file)!,
                Enum.GetValues<Unknown>()[Array.IndexOf(unknowns, parsed.GetValue(wanted)!)],
                parsed.GetValue(write),
                streams
            )
        );
        return command;
    }

    private static ExitStatus Run(string file, Unknown unknown, bool write, Streams streams)
    {
        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        Study study = Study.Of(reading.Design!, builds: 0);
        if (study.Action is not { } action)
        {
            FindingList.Write(streams.Out, file, reading, study.Findings);
            return ExitStatus.Stopped;
        }

        SolveAnswer answer = action.Solver.For(unknown);
        Tell(answer, streams.Out);
        if (!answer.IsPossible)
        {
            return ExitStatus.Stopped;
        }

        if (write)
        {
            string text = answer.Figures.Aggregate(
                reading.Text,
                (before, figure) => DesignEdit.Set(before, figure.Key, Plain(figure.AfterMm))
            );
            DesignFile.Write(file, text, replace: true);
            streams.Out.WriteLine(CliWords.Of.Format("solve.written", file));
        }

        return ExitStatus.Done;
    }

    private static void Tell(SolveAnswer answer, TextWriter to)
    {
        foreach (SolvedFigure figure in answer.Figures)
        {
            to.WriteLine(
                double.IsFinite(figure.BeforeMm)
                    ? CliWords.Of.Format(
                        "solve.figure",
                        figure.Key,
                        figure.BeforeMm,
                        figure.AfterMm
                    )
                    : CliWords.Of.Format("solve.new-figure", figure.Key, figure.AfterMm)
            );
        }

        if (!answer.IsPossible)
        {
            to.WriteLine(answer.Reason);
        }

        to.WriteLine();
        Row(to, "solve.head-board", answer.OnBoard);
        Row(to, "solve.head-strung", answer.Strung);
    }

    private static void Row(TextWriter to, string head, HeightChain chain)
    {
        to.WriteLine(CliWords.Of[head]);
        to.WriteLine(CliWords.Of.Format("solve.neck", chain.NeckMm));
        to.WriteLine(CliWords.Of.Format("solve.dome", chain.DomeMm));
        to.WriteLine(
            CliWords.Of.Format("solve.saddle", chain.Bass.SaddleMm, chain.Treble.SaddleMm)
        );
        to.WriteLine(
            CliWords.Of.Format("solve.action", chain.Bass.Action12Mm, chain.Treble.Action12Mm)
        );
        to.WriteLine(CliWords.Of.Format("solve.projection", chain.ProjectionMm));
    }

    // A hundredth of a mm is finer than a plane; the file stays readable.
    private static string Plain(double mm) =>
        Math.Round(mm, 2).ToString("0.##", CultureInfo.InvariantCulture);
}

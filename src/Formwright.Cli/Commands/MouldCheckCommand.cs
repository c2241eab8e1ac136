using System.CommandLine;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Instrument;
using Formwright.Jigs;
using Formwright.Jigs.Mould;
using Formwright.Jigs.MouldFits;

namespace Formwright.Cli.Commands;

/// <summary><c>mould-check FILE --mould MOULD</c>: whether an existing mould serves a design, what to change, and where its holes come on the new board.</summary>
internal static class MouldCheckCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Option<string> mould = new("--mould")
        {
            Description = CliWords.Of["option.mould"],
            HelpName = CliWords.Of["argument.file"],
            Required = true,
        };
        Command command = new("mould-check", CliWords.Of["command.mould-check"]) { file, mould };
        command.SetAction(parsed =>
            (int)Run(parsed.GetValue(file)!, parsed.GetValue(mould)!, streams)
        );
        return command;
    }

    private static ExitStatus Run(string file, string mould, Streams streams)
    {
        DesignReading? wanted = DesignFile.Read(file, streams);
        DesignReading? given = DesignFile.Read(mould, streams);
        if (wanted is null || given is null)
        {
            return ExitStatus.WrongInput;
        }

        if (
            Build(file, wanted, streams) is not { } guitar
            || Build(mould, given, streams) is not { } old
        )
        {
            return ExitStatus.Stopped;
        }

        MouldFit fit = MouldFit.Of(guitar, old);
        Tell(fit, streams.Out);
        return fit.Verdict == MouldVerdict.DoesNotFit ? ExitStatus.Stopped : ExitStatus.Done;
    }

    private static Guitar? Build(string file, DesignReading reading, Streams streams)
    {
        GuitarResult result = Guitar.Build(reading.Design!);
        if (result.Guitar is null)
        {
            FindingList.Write(streams.Error, file, reading, result.Findings);
        }

        return result.Guitar;
    }

    private static void Tell(MouldFit fit, TextWriter to)
    {
        to.WriteLine(CliWords.Of[$"mould-check.{Choices.NameOf(fit.Verdict)}"]);
        to.WriteLine(CliWords.Of.Format("mould-check.face", fit.ShiftMm, fit.ProudMm, fit.OffMm));
        foreach (MouldChange change in fit.Changes)
        {
            to.WriteLine($"  {(change.IsPossible ? "-" : "x")} {change.Text}");
        }

        foreach (FitStretch stretch in fit.Stretches)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    stretch.IsProud ? "mould-check.proud" : "mould-check.off",
                    stretch.FromMm,
                    stretch.ToMm,
                    stretch.MostMm,
                    stretch.MostAtMm
                )
            );
        }

        if (fit.Verdict == MouldVerdict.DoesNotFit)
        {
            return;
        }

        to.WriteLine();
        to.WriteLine(CliWords.Of["mould-check.holes"]);
        foreach (Fastener hole in fit.Fasteners)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    "mould-check.hole",
                    JigsWords.Of[$"hole.{hole.Kind}"],
                    hole.Centre.X,
                    Math.Abs(hole.Centre.Y),
                    CliWords.Of[hole.Centre.Y > 0 ? "mould-check.bass" : "mould-check.treble"]
                )
            );
        }
    }
}

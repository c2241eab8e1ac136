using System.CommandLine;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument;
using Formwright.Jigs.Brackets;
using Formwright.Packs;
using Formwright.Packs.Report;

namespace Formwright.Cli.Commands;

/// <summary><c>jig FILE…</c>: the fewest slots and brackets that serve all designs, and how each is set. The board and the bracket are those of the first.</summary>
internal static class JigCommand
{
    public static Command Make(Streams streams)
    {
        Argument<string[]> files = new(CliWords.Of["argument.file"])
        {
            Description = CliWords.Of["argument.designs"],
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string> gap = new("--gap")
        {
            Description = CliWords.Of["option.jig-gap"],
            HelpName = "110",
        };
        Option<string> folder = new("--out")
        {
            Description = CliWords.Of["option.jig-out"],
            HelpName = CliWords.Of["argument.folder"],
        };
        Option<bool> json = new("--json") { Description = CliWords.Of["option.jig-json"] };
        Command command = new("jig", CliWords.Of["command.jig"]) { files, gap, folder, json };
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(files)!,
                parsed.GetValue(gap),
                parsed.GetValue(folder),
                parsed.GetValue(json),
                streams
            )
        );
        return command;
    }

    private static ExitStatus Run(
        string[] files,
        string? gap,
        string? folder,
        bool json,
        Streams streams
    )
    {
        double? longest = null;
        if (gap is not null)
        {
            if (Lengths.Read(gap, out double given) != LengthFault.None || given is < 30 or > 400)
            {
                streams.Error.WriteLine(CliWords.Of.Format("usage.gap", gap));
                return ExitStatus.WrongInput;
            }

            longest = given;
        }

        // Every file is read before anything is said of one of them.
        List<DesignReading?> readings = [.. files.Select(file => DesignFile.Read(file, streams))];
        if (readings.Any(reading => reading is null))
        {
            return ExitStatus.WrongInput;
        }

        if (
            Family(files, [.. readings.OfType<DesignReading>()], longest, streams) is not { } family
        )
        {
            return ExitStatus.Stopped;
        }

        if (json)
        {
            streams.Out.Write(ReportJson.Write(family.Report));
        }
        else
        {
            Tell(family, streams.Out);
            streams.Out.WriteLine();
            FindingList.Write(streams.Out, files[0], readings[0]!, family.Plan.Findings);
        }

        bool isStopped = family.Plan.Findings.Any(finding => finding.Severity == Severity.Stop);
        if (folder is null || isStopped)
        {
            return isStopped ? ExitStatus.Stopped : ExitStatus.Done;
        }

        return Write(family, folder, streams);
    }

    private static FamilyJig? Family(
        string[] files,
        IReadOnlyList<DesignReading> readings,
        double? longest,
        Streams streams
    )
    {
        using SlowNotice notice = new(streams, CliWords.Of["progress.computing"]);
        List<Guitar> guitars = [];
        for (int i = 0; i < readings.Count; i++)
        {
            GuitarResult result = Guitar.Build(readings[i].Design!);
            if (result.Guitar is null)
            {
                FindingList.Write(streams.Error, files[i], readings[i], result.Findings);
                return null;
            }

            guitars.Add(result.Guitar);
        }

        JigDesign design = guitars[0].Design.Jig;
        return new FamilyJig(
            JigMaker.Of(guitars, design with { LargestGapMm = longest ?? design.LargestGapMm }),
            [.. guitars.Select(guitar => guitar.Design)]
        );
    }

    private static ExitStatus Write(FamilyJig family, string folder, Streams streams)
    {
        using Interruption interruption = new();
        using SlowNotice notice = new(streams, CliWords.Of["progress.packing"]);
        PackResult result = family.Write(folder, cancel: interruption.Token);
        if (result.Manifest is not { } manifest)
        {
            streams.Error.WriteLine(result.Fault);
            return ExitStatus.WrongInput;
        }

        streams.Out.WriteLine(CliWords.Of.Format("pack.done", folder, manifest.Files.Count));
        return ExitStatus.Done;
    }

    private static void Tell(FamilyJig family, TextWriter to)
    {
        JigPlan plan = family.Plan;
        to.WriteLine(
            CliWords.Of.Format(
                plan.IsGiven ? "jig.given"
                    : plan.IsFewest ? "jig.proven"
                    : "jig.not-proven",
                plan.Slots.Count,
                plan.Brackets,
                plan.LowerBound
            )
        );
        to.WriteLine(CliWords.Of.Format("jig.gap", plan.LargestGapMm, plan.Design.LargestGapMm));
        foreach (JigMember member in plan.Members)
        {
            to.WriteLine();
            to.WriteLine(CliWords.Of.Format("jig.member", member.Name, member.LargestGapMm));
            foreach (BracketSetting setting in member.Settings)
            {
                double degrees = setting.TurnRad * 180 / Math.PI;
                to.WriteLine(
                    CliWords.Of.Format(
                        "jig.setting",
                        setting.Slot,
                        setting.AlongSlotMm,
                        Math.Abs(degrees),
                        CliWords.Of[degrees >= 0 ? "jig.to-tail" : "jig.to-heel"],
                        setting.BoltMm,
                        CliWords.Of[
                            setting.Contact.Face == BracketFace.Front ? "jig.front" : "jig.rear"
                        ],
                        setting.HeightToMm,
                        setting.Contact.GapMm
                    )
                );
            }
        }

        if (!plan.IsGiven)
        {
            to.WriteLine();
            to.WriteLine(CliWords.Of["jig.slots"]);
            to.WriteLine();
            to.Write(family.SlotsText.TrimEnd('\n'));
            to.WriteLine();
        }
    }
}

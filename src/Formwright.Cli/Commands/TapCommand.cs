using System.CommandLine;
using System.Globalization;
using Formwright.Design;
using Formwright.Design.Reading;
using Formwright.Instrument;
using Formwright.Instrument.Boards;
using Formwright.Packs;
using Formwright.Sheets.Body;

namespace Formwright.Cli.Commands;

/// <summary><c>tap FILE --recording WAV</c>: the notes in a recorded tap of the soundboard's wood, a picture of its spectrum, and the note in the design.</summary>
internal static class TapCommand
{
    private static readonly string[] Modes = ["long", "cross", "twist"];

    public static Command Make(Streams streams)
    {
        Argument<string> file = DesignFile.Argument();
        Option<string> recording = new("--recording")
        {
            Description = CliWords.Of["option.recording"],
            HelpName = "tap.wav",
            Required = true,
        };
        Option<string> mode = new("--mode")
        {
            Description = CliWords.Of["option.mode"],
            HelpName = string.Join('|', Modes),
        };
        mode.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !Modes.Contains(given))
            {
                result.AddError(CliWords.Of.Format("usage.mode", given, string.Join(", ", Modes)));
            }
        });
        Option<double?> note = new("--note")
        {
            Description = CliWords.Of["option.note"],
            HelpName = "Hz",
        };
        Option<bool> write = new("--write") { Description = CliWords.Of["option.write-note"] };
        Option<string> sheet = new("--sheet")
        {
            Description = CliWords.Of["option.sheet-tap"],
            HelpName = "tap.pdf",
        };
        Command command = new("tap", CliWords.Of["command.tap"])
        {
            file,
            recording,
            mode,
            note,
            write,
            sheet,
        };
        command.SetAction(parsed =>
            (int)Run(
                parsed.GetValue(file)!,
                parsed.GetValue(recording)!,
                parsed.GetValue(mode),
                parsed.GetValue(note),
                parsed.GetValue(write),
                parsed.GetValue(sheet),
                streams
            )
        );
        return command;
    }

    private static ExitStatus Run(
        string file,
        string recording,
        string? mode,
        double? note,
        bool write,
        string? sheet,
        Streams streams
    )
    {
        if (write && mode is null)
        {
            streams.Error.WriteLine(CliWords.Of["tap.needs-mode"]);
            return ExitStatus.WrongInput;
        }

        if (DesignFile.Read(file, streams) is not { } reading)
        {
            return ExitStatus.WrongInput;
        }

        if (!File.Exists(recording))
        {
            streams.Error.WriteLine(CliWords.Of.Format("tap.no-file", recording));
            return ExitStatus.WrongInput;
        }

        WavReading wav = WavReader.Load(recording);
        if (!wav.Succeeded)
        {
            streams.Error.WriteLine($"{recording}: {wav.Message}");
            return ExitStatus.WrongInput;
        }

        TapSpectrum spectrum = TapSpectrum.Of(wav.Recording);
        Tell(spectrum, streams.Out);
        if (sheet is not null)
        {
            if (Guitar.Build(reading.Design!).Guitar is not { } guitar)
            {
                FindingList.Write(
                    streams.Out,
                    file,
                    reading,
                    Study.Of(reading.Design!, builds: 0).Findings
                );
                return ExitStatus.Stopped;
            }

            OutputFile.Sheets(sheet, [TapSheet.Of(guitar, spectrum, Path.GetFileName(recording))]);
            streams.Out.WriteLine(CliWords.Of.Format("board-check.drawn", sheet));
        }

        if (Chosen(spectrum, note) is not { } chosen)
        {
            streams.Out.WriteLine(CliWords.Of["tap.no-note"]);
            return ExitStatus.Stopped;
        }

        return write ? Written(file, reading, mode!, chosen, streams) : ExitStatus.Done;
    }

    // Into the design, if that stays a whole design, and what follows for the board.
    private static ExitStatus Written(
        string file,
        DesignReading reading,
        string mode,
        TapPeak chosen,
        Streams streams
    )
    {
        string key = $"board_test.tap_{mode}";
        string hz = Math.Round(chosen.FrequencyHz, 1).ToString("0.0", CultureInfo.InvariantCulture);
        string text = DesignEdit.Set(reading.Text, key, hz);
        DesignReading after = DesignText.Parse(text, file);
        foreach (Diagnostic fault in after.Diagnostics)
        {
            streams.Error.WriteLine(fault);
        }

        if (!after.Succeeded)
        {
            return ExitStatus.WrongInput;
        }

        DesignFile.Write(file, text, replace: true);
        streams.Out.WriteLine(CliWords.Of.Format("tap.written", key, hz, file));
        if (Study.Of(after.Design, builds: 0).Body is { } body)
        {
            BoardThickness thickness = body.Wood.Thickness;
            streams.Out.WriteLine(
                CliWords.Of.Format(
                    "tap.board",
                    body.Board.Timber.ModulusLongMPa / 1000,
                    body.Board.Timber.ModulusAcrossMPa / 1000,
                    thickness.ForLongMm,
                    thickness.ForCrossMm,
                    thickness.ForBothMm
                )
            );
        }

        return ExitStatus.Done;
    }

    // The note nearest to the one that the maker means; else the loudest.
    private static TapPeak? Chosen(TapSpectrum spectrum, double? wanted) =>
        spectrum.Peaks.Count == 0 ? null
        : wanted is { } hz ? spectrum.Peaks.MinBy(peak => Math.Abs(Math.Log(peak.FrequencyHz / hz)))
        : spectrum.Peaks.MaxBy(peak => peak.LevelDb);

    private static void Tell(TapSpectrum spectrum, TextWriter to)
    {
        to.WriteLine(CliWords.Of.Format("tap.head", spectrum.ResolutionHz));
        foreach (TapPeak peak in spectrum.Peaks)
        {
            to.WriteLine(
                double.IsFinite(peak.LossFactor)
                    ? CliWords.Of.Format("tap.row", peak.FrequencyHz, peak.LevelDb, peak.LossFactor)
                    : CliWords.Of.Format("tap.row-short", peak.FrequencyHz, peak.LevelDb)
            );
        }
    }
}

using Formwright.Design.Reading;
using Formwright.Trace;

namespace Formwright.Cli.Commands;

/// <summary>Says in a few lines what a trace came to.</summary>
internal static class TraceTexts
{
    private const int MostBumps = 24;

    public static void Write(TextWriter to, TraceResult trace)
    {
        to.WriteLine(trace.File.Unit.Message);
        foreach (Diagnostic note in trace.File.Notes)
        {
            to.WriteLine(note);
        }

        if (trace.ScaleFactor != 1)
        {
            to.WriteLine(CliWords.Of.Format("trace.scaled", trace.ScaleFactor));
        }

        to.WriteLine(
            CliWords.Of.Format(
                $"trace.line-{Choices.NameOf(trace.Alignment.Source)}",
                trace.Alignment.ResidualMm
            )
        );
        Features(to, trace.Features);
        to.WriteLine(
            CliWords.Of.Format(
                trace.Misfit.IsWithinTolerance ? "trace.fair" : "trace.fair-not-within",
                trace.Misfit.Segments,
                trace.Misfit.SegmentsMm,
                trace.Misfit.RmsMm,
                trace.Misfit.LargestMm
            )
        );
        if (trace.Differences.Count > 0)
        {
            SideDifference worst = trace.Differences.MaxBy(row => Math.Abs(row.TrebleOverBassMm));
            to.WriteLine(
                CliWords.Of.Format("trace.sides", Math.Abs(worst.TrebleOverBassMm), worst.UMm)
            );
        }

        to.WriteLine(
            CliWords.Of.Format(
                "trace.floor",
                trace.Floor.PointNoiseMm,
                trace.Floor.HeightMm(10),
                trace.Floor.HeightMm(40)
            )
        );
        Bumps(to, trace);
    }

    private static void Features(TextWriter to, TracedFeatures features)
    {
        to.WriteLine(CliWords.Of.Format("trace.length", features.BodyLengthMm));
        void Line(string key, TracedFeature? feature)
        {
            if (feature is not null)
            {
                to.WriteLine(
                    CliWords.Of.Format(key, feature.UMm, feature.WidthMm, feature.RadiusMm)
                );
            }
        }

        Line("trace.upper-bout", features.UpperBout);
        Line("trace.waist", features.Waist);
        Line(features.IsGuitar ? "trace.lower-bout" : "trace.widest", features.LowerBout);
        if (features.HeelFlatMm > 0 || features.TailFlatMm > 0)
        {
            to.WriteLine(
                CliWords.Of.Format("trace.flats", features.HeelFlatMm, features.TailFlatMm)
            );
        }
    }

    private static void Bumps(TextWriter to, TraceResult trace)
    {
        if (trace.Bumps.Count == 0)
        {
            to.WriteLine(CliWords.Of["trace.no-bumps"]);
        }

        for (int i = 0; i < trace.Bumps.Count && i < MostBumps; i++)
        {
            Bump bump = trace.Bumps[i];
            string side = bump.Side == TraceSide.Bass ? "bass" : "treble";
            to.WriteLine(
                CliWords.Of.Format(
                    bump.IsProud ? $"trace.bump-proud-{side}" : $"trace.bump-hollow-{side}",
                    i + 1,
                    bump.UMm,
                    bump.HeightMm,
                    bump.LengthMm
                )
            );
        }

        foreach ((TraceSide side, double from, double until) in trace.Unsure)
        {
            to.WriteLine(
                CliWords.Of.Format(
                    side == TraceSide.Bass ? "trace.unsure-bass" : "trace.unsure-treble",
                    from,
                    until
                )
            );
        }
    }
}

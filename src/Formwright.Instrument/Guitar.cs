using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Findings;
using Formwright.Instrument.Body;

namespace Formwright.Instrument;

/// <summary>
/// The instrument that a design describes: its outline and its dome, and what they imply. Everything else (neck and action, body, tooling)
/// is computed from it by pure functions.
/// </summary>
public sealed record Guitar(
    InstrumentDesign Design,
    OutlineSolution Solution,
    Outline Outline,
    OutlineFigures Figures,
    SoundboardDome Dome
)
{
    /// <summary>Where the body starts in the instrument frame, mm.</summary>
    public double JoinMm => Design.Identity.JoinMm;

    /// <summary>Where it ends, mm.</summary>
    public double TailMm => JoinMm + Design.Outline.BodyLengthMm;

    /// <summary>Computes the instrument.</summary>
    /// <param name="design">A design that was read without diagnostics.</param>
    /// <param name="earlier">An instrument computed before: what the change between the two designs can't touch is taken from it.</param>
    /// <returns>The instrument, or null with the findings that say what can't be met; findings come with an instrument too.</returns>
    public static GuitarResult Build(InstrumentDesign design, Guitar? earlier = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        List<Finding> findings = [];
        bool sameOutline = earlier is not null && earlier.Design.Outline == design.Outline;
        OutlineSolution solution = sameOutline
            ? earlier!.Solution
            : BodyOutline.Solve(design.Outline);
        if (solution.Outline is null)
        {
            findings.AddRange(
                OutlineRules.Of(solution.Problems, design.Identity.JoinMm, design.Outline)
            );
            return new GuitarResult(null, findings);
        }

        Outline outline = solution.Outline;
        OutlineFigures figures = sameOutline ? earlier!.Figures : OutlineFigures.Of(outline);
        findings.AddRange(
            OutlineRules.Of(solution.Remarks, design.Identity.JoinMm, design.Outline)
        );
        findings.AddRange(Places(design, outline));
        bool sameDome =
            sameOutline
            && earlier!.Design.Dome == design.Dome
            && earlier.Design.Soundhole == design.Soundhole;
        SoundboardDome? dome = sameDome ? earlier!.Dome : DomeOf(design, outline);
        if (dome is null)
        {
            findings.Add(
                DomeRules.NoRoom.Broken(
                    design.Dome.RimWidthMm,
                    SoundboardDome.StartOf(design.Dome, design.Soundhole),
                    "dome.rim_width"
                )
            );
            return new GuitarResult(null, findings);
        }

        double ribAndLining = design.Ribs.ThicknessMm + design.Ribs.LiningWidthMm;
        if (
            design.Dome.HeightMm > 0
            && design.Dome.Kind != DomeKind.RimOnSphere
            && design.Dome.RimWidthMm < ribAndLining
        )
        {
            findings.Add(
                DomeRules.RimNarrowerThanLinings.Broken(
                    design.Dome.RimWidthMm,
                    ribAndLining,
                    "dome.rim_width"
                )
            );
        }

        return new GuitarResult(new Guitar(design, solution, outline, figures, dome), findings);
    }

    private static SoundboardDome? DomeOf(InstrumentDesign design, Outline outline) =>
        SoundboardDome.RegionOf(outline, design.Dome, design.Soundhole) is { } region
            ? SoundboardDome.Over(region, outline, design.Dome, design.Soundhole)
            : null;

    private static IEnumerable<Finding> Places(InstrumentDesign design, Outline outline)
    {
        SoundholeDesign hole = design.Soundhole;
        double reach = hole.AtMm + hole.RadiusMm;
        double room = outline.WidthAt(hole.AtMm) / 2;
        if (reach > outline.BodyLengthMm || hole.AtMm < hole.RadiusMm)
        {
            yield return OutlineRules.SoundholeOutside.Broken(
                reach,
                outline.BodyLengthMm,
                "soundhole.at"
            );
        }
        else if (hole.RadiusMm > room)
        {
            yield return OutlineRules.SoundholeOutside.Broken(
                hole.RadiusMm,
                room,
                "soundhole.radius"
            );
        }

        for (int i = 0; i < design.HarmonicBars.Count; i++)
        {
            double at = design.HarmonicBars[i].AtMm;
            if (at >= outline.BodyLengthMm)
            {
                yield return OutlineRules.BarOutside.Broken(
                    at,
                    outline.BodyLengthMm,
                    $"harmonic_bars[{i}].at",
                    new Place(design.Identity.JoinMm + at, 0)
                );
            }
        }
    }
}

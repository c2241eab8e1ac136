using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>The soundboard with its bars and braces.</summary>
/// <param name="AreaMm2">Area without the soundhole, mm².</param>
/// <param name="MassG">Mass of the plate at its thickness, g.</param>
/// <param name="Braces">Harmonic bars from heel to tail, then fan and closing bars from bass to treble, then the maker's own.</param>
/// <param name="BraceMassG">Mass of all of them, g.</param>
/// <param name="BridgeAt">Middle of the bridge, body frame.</param>
public sealed record SoundboardPlan(
    double AreaMm2,
    double MassG,
    IReadOnlyList<Brace> Braces,
    double BraceMassG,
    Point BridgeAt
)
{
    // Braces shorter than this are left out of a layout, mm (our choice).
    private const double LeastFanMm = 40;

    /// <summary>The soundboard of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="outline">Its outline.</param>
    /// <param name="dome">Height of the soundboard over the datum, body frame.</param>
    /// <param name="timber">Its wood.</param>
    public static SoundboardPlan Of(
        InstrumentDesign design,
        Outline outline,
        IHeightField dome,
        Timber timber
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(timber);
        double hole = design.Soundhole.RadiusMm;
        // A soundhole larger than the board is a finding of the outline; here it only must not turn the area round.
        double area = Math.Max(1, outline.AreaMm2 - (Math.PI * hole * hole));
        double density = Timber.Of(design.Wood.Braces).DensityKgPerM3;
        Draft[] drafts = [.. Bars(design, outline), .. Layout(design, outline), .. Own(design)];
        Brace[] braces = [.. drafts.Select(draft => Finished(draft, drafts, dome, density))];
        return new SoundboardPlan(
            area,
            BoardMass(timber, area, design.Soundboard.ThicknessMm),
            braces,
            braces.Sum(brace => brace.MassG),
            BridgeMiddle(design)
        );
    }

    /// <summary>Middle of the bridge, body frame: the saddle stands ahead of it, on the scale length (compensation is left to the saddle's top).</summary>
    public static Point BridgeMiddle(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new Point(
            design.Identity.ScaleMm + design.Saddle.AheadMm - design.Identity.JoinMm,
            0
        );
    }

    private static double BoardMass(Timber timber, double area, double thickness) =>
        Boards.BoardThickness.MassG(timber.DensityKgPerM3, area, thickness);

    private sealed record Draft(
        BraceKind Kind,
        string Name,
        IReadOnlyList<Point> Line,
        BarShape Shape,
        string Field
    );

    // A harmonic bar reaches the ribs' inner faces, let into the linings.
    private static IEnumerable<Draft> Bars(InstrumentDesign design, Outline outline)
    {
        for (int i = 0; i < design.HarmonicBars.Count; i++)
        {
            HarmonicBarDesign bar = design.HarmonicBars[i];
            double half = InnerFace.HalfWidth(outline, bar.AtMm, design.Ribs.ThicknessMm);
            if (half < 1)
            {
                continue;
            }

            yield return new Draft(
                BraceKind.HarmonicBar,
                $"H{i + 1}",
                [new(bar.AtMm, -half), new(bar.AtMm, half)],
                new BarShape(
                    bar.WidthMm,
                    bar.HeightMm,
                    Math.Min(design.Bracing.BarEndHeightMm, bar.HeightMm),
                    design.Bracing.BarScoopMm,
                    BraceSection.Square
                ),
                $"harmonic_bars[{i}].at"
            );
        }
    }

    private static IEnumerable<Draft> Layout(InstrumentDesign design, Outline outline)
    {
        BracingDesign bracing = design.Bracing;
        SoundholeDesign hole = design.Soundhole;
        double from = Math.Max(
            hole.AtMm + hole.RadiusMm,
            design
                .HarmonicBars.Select(bar => bar.AtMm + (bar.WidthMm / 2))
                .Where(u => u < outline.BodyLengthMm)
                .DefaultIfEmpty(0)
                .Max()
        );
        FanLines fan = new(
            from + bracing.FromBarMm,
            outline.BodyLengthMm,
            outline.Turns.Max(row => row.WidthMm)
        );
        double room = design.Ribs.ThicknessMm + design.Ribs.LiningWidthMm + bracing.FromRimMm;
        BarShape shape = new(
            bracing.WidthMm,
            bracing.HeightMm,
            Math.Min(bracing.EndHeightMm, bracing.HeightMm),
            bracing.ScoopMm,
            bracing.Section
        );
        int fans = 0;
        int closings = 0;
        foreach (FanLines.Line line in fan.Of(bracing.Layout))
        {
            if (BraceLines.Within(outline, line.From, line.To, room, LeastFanMm) is not { } kept)
            {
                continue;
            }

            string name = line.Kind == BraceKind.Fan ? $"F{++fans}" : $"C{++closings}";
            yield return new Draft(line.Kind, name, [kept.From, kept.To], shape, "bracing.layout");
        }
    }

    private static IEnumerable<Draft> Own(InstrumentDesign design)
    {
        for (int i = 0; i < design.Braces.Count; i++)
        {
            BraceDesign brace = design.Braces[i];
            Point[] line = [.. brace.StationsMm.Zip(brace.AcrossMm, (u, y) => new Point(u, y))];
            BarShape shape = new(
                brace.WidthMm,
                brace.HeightMm,
                Math.Min(brace.EndHeightMm, brace.HeightMm),
                brace.ScoopMm,
                design.Bracing.Section
            );
            string name = brace.Name.Length > 0 ? brace.Name : $"B{i + 1}";
            yield return new Draft(BraceKind.Own, name, line, shape, $"braces[{i}].at");
            if (brace.Mirrored)
            {
                Point[] other = [.. line.Select(place => new Point(place.X, -place.Y))];
                yield return new Draft(BraceKind.Own, name + "′", other, shape, $"braces[{i}].at");
            }
        }
    }

    private static Brace Finished(
        Draft draft,
        IReadOnlyList<Draft> all,
        IHeightField dome,
        double density
    )
    {
        Gauge gauge = Gauge.Of(dome.HeightAt, draft.Line);
        BraceLap[] laps =
        [
            .. all.Where(other => !ReferenceEquals(other, draft))
                .SelectMany(other =>
                    BraceLines
                        .Crossings(draft.Line, other.Line)
                        .Select(cross => new BraceLap(other.Name, cross.AlongMm, cross.Place))
                )
                .OrderBy(lap => lap.AlongMm),
        ];
        return new Brace(
            draft.Kind,
            draft.Name,
            draft.Line,
            draft.Shape,
            gauge,
            laps,
            draft.Shape.HeightMm + Math.Abs(gauge.MostMm),
            draft.Shape.VolumeMm3(gauge.LengthMm) * density * 1e-6,
            draft.Field
        );
    }
}

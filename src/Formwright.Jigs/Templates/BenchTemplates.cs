using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Instrument.Action;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Templates;

/// <summary>
/// The templates of the bench beside the outline's: where bars, rosette and bridge go, fingerboard and fret-slot rule, and gauges to lay over the dome
/// when the box is off the board.
/// </summary>
public static class BenchTemplates
{
    private const double ToleranceMm = 0.01;
    private const double GaugeHeightMm = 40;
    private const double RuleWidthMm = 30;

    // A window shows the two ends of a bar: so far from the ribs' inner face, and so long.
    private const double FromRibMm = 8;
    private const double WindowMm = 35;
    private const double LeastWebMm = 8;

    /// <summary>Id of the template for bars, rosette and bridge.</summary>
    public const string PlacementId = "template-placement";

    /// <summary>The templates, in the workboard frame; the bridge stands as for an uncompensated saddle.</summary>
    public static IReadOnlyList<Part> Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        return
        [
            Placement(guitar, SoundboardPlan.BridgeMiddle(guitar.Design)),
            .. Fingerboard(guitar),
            .. DomeGauges(guitar),
        ];
    }

    /// <summary>The template for bars, rosette and bridge with the window of a bridge that stands elsewhere.</summary>
    /// <param name="placement">The template.</param>
    /// <param name="guitar">The instrument.</param>
    /// <param name="bridge">Middle of the bridge, body frame, mm.</param>
    public static Part WithBridge(Part placement, Guitar guitar, Point bridge)
    {
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(guitar);
        return placement with { Insides = [.. Windows(guitar, bridge).Select(Rectangle)] };
    }

    private static Part Placement(Guitar guitar, Point bridge)
    {
        double join = guitar.JoinMm;
        ArcPath line = new OutlineOffsets(guitar.Outline, join, ToleranceMm).From(0, 0)!;
        SoundholeDesign hole = guitar.Design.Soundhole;
        Point centre = new(join + hole.AtMm, 0);
        Box[] windows = [.. Windows(guitar, bridge)];
        return Make(
            guitar,
            PlacementId,
            new ContourBuilder().Along(line).Back(ArcPaths.Mirrored(line)).Close(),
            [
                new Mark("mark.centreline", new Point(join, 0), new Point(guitar.TailMm, 0)),
                new Mark("mark.soundhole", centre, centre, hole.RadiusMm),
            ]
        ) with
        {
            Insides = [.. windows.Select(Rectangle)],
            Holes = [new Hole(HoleKind.Pilot, centre, guitar.Design.Rosette.PilotMm)],
        };
    }

    // Only what leaves a web to the edge and to the window before it.
    private static IEnumerable<Box> Windows(Guitar guitar, Point bridge)
    {
        double join = guitar.JoinMm;
        Outline outline = guitar.Outline;
        double before = double.NegativeInfinity;
        foreach (HarmonicBarDesign bar in guitar.Design.HarmonicBars.OrderBy(bar => bar.AtMm))
        {
            double half = InnerFace.HalfWidth(outline, bar.AtMm, guitar.Design.Ribs.ThicknessMm);
            double outer = half - FromRibMm;
            double from = bar.AtMm - (bar.WidthMm / 2);
            if (outer - WindowMm < LeastWebMm || from < before + LeastWebMm)
            {
                continue;
            }

            before = from + bar.WidthMm;
            yield return Corners(join + from, outer - WindowMm, join + before, outer);
            yield return Corners(join + from, -outer, join + before, WindowMm - outer);
        }

        double wide = guitar.Design.Bridge.LengthMm / 2;
        double deep = guitar.Design.Bridge.WidthMm / 2;
        double narrow = Math.Min(
            outline.WidthAt(bridge.X - deep),
            outline.WidthAt(bridge.X + deep)
        );
        if (bridge.X - deep > before + LeastWebMm && (narrow / 2) - wide > LeastWebMm)
        {
            yield return Corners(join + bridge.X - deep, -wide, join + bridge.X + deep, wide);
        }
    }

    private static IEnumerable<Part> Fingerboard(Guitar guitar)
    {
        InstrumentDesign design = guitar.Design;
        double scale = design.Identity.ScaleMm;
        double[] frets =
        [
            .. Enumerable
                .Range(1, design.Identity.Frets)
                .Select(k => scale * (1 - Math.Pow(2, -k / 12.0))),
        ];
        double end = FretTable.EndMm(design, frets[^1]);
        double nut = FretTable.WidthAt(design, 0) / 2;
        double last = FretTable.WidthAt(design, end) / 2;
        yield return Make(
            guitar,
            "template-fingerboard",
            new ContourBuilder()
                .LineTo(new Point(0, -nut))
                .LineTo(new Point(0, nut))
                .LineTo(new Point(end, last))
                .LineTo(new Point(end, -last))
                .Close(),
            [
                new Mark("mark.centreline", new Point(0, 0), new Point(end, 0)),
                .. frets.Select((x, i) => Fret(x, FretTable.WidthAt(design, x) / 2, i + 1)),
            ]
        );
        yield return Make(
            guitar,
            "fret-rule",
            Rectangle(Corners(0, -RuleWidthMm / 2, end, RuleWidthMm / 2)),
            [.. frets.Select((x, i) => Fret(x, RuleWidthMm / 2, i + 1))]
        );
    }

    private static Mark Fret(double x, double half, int fret) =>
        new("mark.fret", new Point(x, -half), new Point(x, half), fret);

    // Along the centreline from join to tail, and across at the top of the dome: they rest on the rim, their hollow over the dome.
    private static IEnumerable<Part> DomeGauges(Guitar guitar)
    {
        if (guitar.Dome.Field.Peak is not { HeightMm: > 0 } top)
        {
            yield break;
        }

        double length = guitar.Outline.BodyLengthMm;
        double Along(double y) => -guitar.Dome.Field.HeightAt(new Point(y + (length / 2), 0));
        yield return Gauge(
            guitar,
            "dome-gauge-long",
            length / 2,
            Along,
            [("mark.join", -0.85), ("mark.tail", 0.85)]
        );
        double across = guitar.Outline.WidthAt(top.Place.X) / 2;
        yield return Gauge(
            guitar,
            "dome-gauge-cross",
            across,
            y => -guitar.Dome.Field.HeightAt(new Point(top.Place.X, y)),
            [("mark.station", 0.5)],
            guitar.JoinMm + top.Place.X
        );
    }

    private static Part Gauge(
        Guitar guitar,
        string id,
        double half,
        Func<double, double> depth,
        (string Key, double Share)[] words,
        double? value = null
    ) =>
        Make(
            guitar,
            id,
            ProfileEdge.Of(half, -GaugeHeightMm, depth),
            [
                new Mark("mark.centreline", new Point(-GaugeHeightMm, 0), new Point(depth(0), 0)),
                .. words.Select(word =>
                {
                    Point at = new(-GaugeHeightMm / 2, half * word.Share);
                    return new Mark(word.Key, at, at, value);
                }),
            ]
        );

    private static Box Corners(double x0, double y0, double x1, double y1) =>
        new(new Point(x0, y0), new Point(x1, y1));

    private static ArcPath Rectangle(Box box) =>
        new ContourBuilder()
            .LineTo(new Point(box.Min.X, box.Min.Y))
            .LineTo(new Point(box.Min.X, box.Max.Y))
            .LineTo(new Point(box.Max.X, box.Max.Y))
            .LineTo(new Point(box.Max.X, box.Min.Y))
            .Close();

    private static Part Make(Guitar guitar, string id, ArcPath edge, Mark[] marks) =>
        new(
            id,
            "material.template",
            guitar.Design.Templates.ThicknessMm,
            1,
            edge,
            [],
            [],
            [],
            marks
        );
}

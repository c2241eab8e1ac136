using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Fields.Plates;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Plates;

/// <summary>Describes a soundboard with its braces and bridge to the plate model, body frame.</summary>
/// <remarks>
/// The rim is the inner edge of the linings. Braces count as rectangles of the height that has the same second moment about the glued face.
/// The bridge is its middle and two wings of even thickness, without slot and holes. Left out: fingerboard and neck foot on the upper bout,
/// rosette, what the linings carry.
/// </remarks>
public static class PlateMaker
{
    /// <summary>The plate of a soundboard.</summary>
    /// <param name="guitar">The instrument.</param>
    /// <param name="soundboard">Its bars and braces.</param>
    /// <param name="board">The wood of the board.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <exception cref="ArgumentException">A figure can't be.</exception>
    public static Plate Of(
        Guitar guitar,
        SoundboardPlan soundboard,
        Timber board,
        ThicknessMap thickness
    )
    {
        ArgumentNullException.ThrowIfNull(guitar);
        ArgumentNullException.ThrowIfNull(soundboard);
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(thickness);
        InstrumentDesign design = guitar.Design;
        IHeightField dome = guitar.Dome.Field;
        return new Plate
        {
            Rim = RimOf(guitar.Outline, design.Ribs.ThicknessMm + design.Ribs.LiningWidthMm),
            Holes = [Circle(design.Soundhole.AtMm, design.Soundhole.RadiusMm)],
            Wood = WoodOf(board),
            ThicknessMm = thickness.At,
            Braces = [.. BracesOf(design, soundboard)],
            Patches = [.. PatchesOf(design, soundboard.BridgeAt)],
            DomeSlope = design.Plate.WithDome ? place => dome.At(place).Slope : null,
        };
    }

    /// <summary>The bridge's footprint: where the strings load it.</summary>
    public static PlateSpot BridgeSpot(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        BridgeDesign bridge = design.Bridge;
        return PlateSpot.Of(
            Rectangle(
                SoundboardPlan.BridgeMiddle(design),
                bridge.WidthMm,
                -bridge.LengthMm / 2,
                bridge.LengthMm / 2
            )
        );
    }

    /// <summary>Height of a rectangle that is as stiff about its glued face as a section of height 1: ∛(3∫z² w dz), w the share of the width.</summary>
    public static double StiffHeightShare(BraceSection section) =>
        section switch
        {
            // A half ellipse on half a rectangle: 1/24 + (5π/16 + 2/3)/8.
            BraceSection.Round => Math.Cbrt(
                3 * ((1.0 / 24) + (((5 * Math.PI / 16) + (2.0 / 3)) / 8))
            ),
            // A gable on half a rectangle: 1/24 + 11/96.
            BraceSection.Gable => Math.Cbrt(3 * ((1.0 / 24) + (11.0 / 96))),
            _ => 1,
        };

    /// <summary>The plane-stress constants of a wood, its width across the grain.</summary>
    public static PlateWood WoodOf(Timber timber)
    {
        ArgumentNullException.ThrowIfNull(timber);
        return new PlateWood(
            timber.ModulusLongMPa,
            timber.ModulusAcrossMPa,
            timber.ShearMPa,
            timber.PoissonLong,
            timber.DensityKgPerM3
        );
    }

    private static ICurve RimOf(Outline outline, double insideMm) =>
        insideMm > 0
            ? (ICurve?)
                Offset
                    .Of(outline.Closed, insideMm)
                    .Paths.Where(path => path.IsClosed)
                    .MaxBy(path => path.LengthMm)
                ?? outline.Closed
            : outline.Closed;

    private static Chain Circle(double uMm, double radiusMm)
    {
        Vector half = new(radiusMm, 0);
        Point middle = new(uMm, 0);
        double length = Math.PI * radiusMm;
        return new Chain(
            [
                new EulerSegment(middle + half, Math.PI / 2, 1 / radiusMm, 0, length),
                new EulerSegment(middle - half, -Math.PI / 2, 1 / radiusMm, 0, length),
            ],
            isClosed: true
        );
    }

    private static IEnumerable<PlateBrace> BracesOf(
        InstrumentDesign design,
        SoundboardPlan soundboard
    )
    {
        Timber wood = Timber.Of(design.Wood.Braces);
        foreach (Brace brace in soundboard.Braces)
        {
            double share = StiffHeightShare(brace.Shape.Section);
            yield return new PlateBrace(
                Stations(brace, share),
                brace.Shape.WidthMm,
                wood.ModulusLongMPa,
                wood.ShearMPa,
                wood.DensityKgPerM3
            );
        }
    }

    // Ends, corners of the line, and the scoops in two straight pieces each.
    private static IEnumerable<BraceStation> Stations(Brace brace, double heightShare)
    {
        double length = brace.LengthMm;
        double scoop = brace.Shape.ScoopFor(length);
        List<double> along = [0, scoop / 2, scoop, length - scoop, length - (scoop / 2), length];
        double run = 0;
        for (int i = 1; i < brace.Line.Count; i++)
        {
            run += brace.Line[i - 1].DistanceTo(brace.Line[i]);
            along.Add(run);
        }

        along.Sort();
        double before = double.NegativeInfinity;
        foreach (double at in along)
        {
            if (at - before > 0.5)
            {
                yield return new(PlaceAt(brace.Line, at), brace.HeightAt(at) * heightShare);
                before = at;
            }
        }
    }

    private static Point PlaceAt(IReadOnlyList<Point> line, double along)
    {
        for (int i = 1; i < line.Count; i++)
        {
            double piece = line[i - 1].DistanceTo(line[i]);
            if (along <= piece || i == line.Count - 1)
            {
                return line[i - 1].Towards(line[i], Math.Clamp(along / piece, 0, 1));
            }

            along -= piece;
        }

        return line[0];
    }

    private static IEnumerable<PlatePatch> PatchesOf(InstrumentDesign design, Point at)
    {
        BridgeDesign bridge = design.Bridge;
        PlateWood wood = WoodOf(Timber.Of(design.Wood.Bridge));
        double end = bridge.LengthMm / 2;
        double middle = Math.Min(bridge.MiddleMm, bridge.LengthMm) / 2;
        yield return Across(at, bridge.WidthMm, -middle, middle, bridge.HeightMm, wood, true);
        double wing = (bridge.WingMm + bridge.WingTipMm) / 2;
        if (end - middle > 1)
        {
            yield return Across(at, bridge.WidthMm, -end, -middle, wing, wood, true);
            yield return Across(at, bridge.WidthMm, middle, end, wing, wood, true);
        }

        if (bridge.PatchThicknessMm > 0)
        {
            double reach = end + bridge.PatchMarginMm;
            yield return Across(
                at,
                bridge.WidthMm + (2 * bridge.PatchMarginMm),
                -reach,
                reach,
                bridge.PatchThicknessMm,
                WoodOf(Timber.Of(design.Wood.Braces)),
                false
            );
        }
    }

    private static PlatePatch Across(
        Point at,
        double widthMm,
        double fromMm,
        double toMm,
        double thicknessMm,
        PlateWood wood,
        bool isOutside
    ) => new(Rectangle(at, widthMm, fromMm, toMm), thicknessMm, wood, Math.PI / 2, isOutside);

    private static Point[] Rectangle(Point at, double widthMm, double fromMm, double toMm)
    {
        double half = widthMm / 2;
        return
        [
            at + new Vector(-half, fromMm),
            at + new Vector(half, fromMm),
            at + new Vector(half, toMm),
            at + new Vector(-half, toMm),
        ];
    }
}

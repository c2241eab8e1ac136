using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body;
using Formwright.Instrument.Strings;
using Formwright.Instrument.Wood;

namespace Formwright.Instrument.Bridges;

/// <summary>The bridge as a piece of wood: its places, its slot and holes, its underside to the dome.</summary>
/// <param name="Middle">Its middle, body frame.</param>
/// <param name="FrontXMm">Its front edge, instrument frame, mm.</param>
/// <param name="LengthMm">Length across, mm.</param>
/// <param name="WidthMm">Width along the centreline, mm.</param>
/// <param name="SlotMiddleMm">Middle of the saddle slot from the front edge, at the middle, mm.</param>
/// <param name="SlotSlopeDeg">How far the slot slants, degrees: positive when its treble end lies nearer the nut.</param>
/// <param name="SlotWidthMm">Width of the slot: the saddle's thickness, mm.</param>
/// <param name="SlotDepthMm">Depth of the slot from the top of the middle, mm.</param>
/// <param name="SlotLengthMm">Length of the slot, mm.</param>
/// <param name="WoodBelowSlotMm">Wood left under the slot, mm.</param>
/// <param name="WoodAheadMm">Wood left ahead of the slot, at its nearest, mm.</param>
/// <param name="TieHoleFromFrontMm">Middle of the tie holes from the front edge, mm.</param>
/// <param name="TieHeightMm">Middle of the tie holes over the soundboard, mm.</param>
/// <param name="Strings">Strings, bass to treble.</param>
/// <param name="Across">Underside across, along the middle of the bridge, from bass to treble wing.</param>
/// <param name="Along">Underside along the centreline, from front to back.</param>
/// <param name="BlankMm">Thickness of the blank: height and hollow, mm.</param>
/// <param name="MassG">Mass, g, of the wood left.</param>
public sealed record BridgePlan(
    Point Middle,
    double FrontXMm,
    double LengthMm,
    double WidthMm,
    double SlotMiddleMm,
    double SlotSlopeDeg,
    double SlotWidthMm,
    double SlotDepthMm,
    double SlotLengthMm,
    double WoodBelowSlotMm,
    double WoodAheadMm,
    double TieHoleFromFrontMm,
    double TieHeightMm,
    IReadOnlyList<BridgeString> Strings,
    Gauge Across,
    Gauge Along,
    double BlankMm,
    double MassG
)
{
    /// <summary>Wood at each end of the slot, mm (common practice: the slot ends just beyond the outermost strings).</summary>
    private const double SlotBeyondStringsMm = 7;

    /// <summary>The bridge of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="dome">Height of the soundboard over the datum, body frame.</param>
    /// <param name="saddleMm">Where each string leaves the saddle, bass to treble, instrument frame, mm: the compensated places.</param>
    public static BridgePlan Of(
        InstrumentDesign design,
        IHeightField dome,
        IReadOnlyList<double> saddleMm
    )
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(dome);
        ArgumentNullException.ThrowIfNull(saddleMm);
        BridgeDesign bridge = design.Bridge;
        SaddleDesign saddle = design.Saddle;
        StringSet strings = StringSet.Of(design);
        double join = design.Identity.JoinMm;
        double mean = (saddleMm[0] + saddleMm[^1]) / 2;
        Point middle = new(mean + saddle.AheadMm - join, 0);
        double front = middle.X + join - (bridge.WidthMm / 2);
        BridgeString[] places =
        [
            .. strings.Strings.Select(
                (each, i) =>
                    new BridgeString(
                        each.Number,
                        each.SaddleYMm,
                        saddleMm[i],
                        saddleMm[i] - front,
                        dome.HeightAt(new Point(saddleMm[i] - join, each.SaddleYMm))
                    )
            ),
        ];
        double half = bridge.LengthMm / 2;
        Gauge across = Gauge.Of(dome.HeightAt, [new(middle.X, -half), new(middle.X, half)]);
        Gauge along = Gauge.Of(
            dome.HeightAt,
            [new(middle.X - (bridge.WidthMm / 2), 0), new(middle.X + (bridge.WidthMm / 2), 0)]
        );
        double slope = Slope(places);
        double slot = strings.Strings.Max(each => Math.Abs(each.SaddleYMm)) + SlotBeyondStringsMm;
        double slotMiddle = mean - front;
        double nearest = slotMiddle - (Math.Abs(slope) * slot) - (saddle.ThicknessMm / 2);
        return new BridgePlan(
            middle,
            front,
            bridge.LengthMm,
            bridge.WidthMm,
            slotMiddle,
            Math.Atan(-slope) * 180 / Math.PI,
            saddle.ThicknessMm,
            bridge.HeightMm - saddle.SlotBottomMm,
            2 * slot,
            saddle.SlotBottomMm,
            nearest,
            slotMiddle + saddle.TieBehindMm,
            saddle.TieHeightMm,
            places,
            across,
            along,
            bridge.HeightMm + Math.Abs(across.MostMm) + Math.Abs(along.MostMm),
            Mass(bridge, saddle, 2 * slot, Timber.Of(design.Wood.Bridge))
        );
    }

    // dx/dy through the places of the saddle, by least squares.
    private static double Slope(BridgeString[] places)
    {
        double x = places.Average(each => each.SaddleXMm);
        double y = places.Average(each => each.YMm);
        double xy = places.Sum(each => (each.SaddleXMm - x) * (each.YMm - y));
        double yy = places.Sum(each => (each.YMm - y) * (each.YMm - y));
        return yy > 0 ? xy / yy : 0;
    }

    private static double Mass(BridgeDesign bridge, SaddleDesign saddle, double slot, Timber wood)
    {
        double wings = Math.Max(0, bridge.LengthMm - bridge.MiddleMm);
        double volume =
            (bridge.MiddleMm * bridge.WidthMm * bridge.HeightMm)
            + (wings * bridge.WidthMm * (bridge.WingMm + bridge.WingTipMm) / 2)
            - (slot * saddle.ThicknessMm * Math.Max(0, bridge.HeightMm - saddle.SlotBottomMm));
        return volume * wood.DensityKgPerM3 * 1e-6;
    }
}

using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument.Strings;

namespace Formwright.Instrument.Bridges;

/// <summary>The nut as a piece.</summary>
/// <param name="LengthMm">Length: the neck's width at the nut, mm.</param>
/// <param name="ThicknessMm">Thickness along the strings, mm.</param>
/// <param name="HeightBassMm">Height at the bass edge of its front, mm.</param>
/// <param name="HeightTrebleMm">Height at the treble edge, mm.</param>
/// <param name="Slots">Slots, bass to treble.</param>
public sealed record NutPlan(
    double LengthMm,
    double ThicknessMm,
    double HeightBassMm,
    double HeightTrebleMm,
    IReadOnlyList<NutSlot> Slots
)
{
    /// <summary>The nut of a design: string undersides as the height chain has them, strings sunk by a share of their diameter.</summary>
    public static NutPlan Of(InstrumentDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        StringSet strings = StringSet.Of(design);
        FingerboardDesign board = design.Fingerboard;
        double width = design.Neck.WidthNutMm;
        double bassEdge = board.ThicknessNutMm;
        double trebleEdge = board.ThicknessNutTrebleMm ?? bassEdge;
        double left = design.Identity.Hand == Hand.Left ? -1 : 1;
        // Fret plane over the fingerboard's underside, at y; y towards the treble side of the frame.
        double FretPlane(double y) =>
            bassEdge + ((trebleEdge - bassEdge) * (0.5 + (y / width))) + board.FretHeightMm;
        int last = strings.Strings.Count - 1;
        NutSlot[] slots =
        [
            .. strings.Strings.Select(
                (each, i) =>
                {
                    double over =
                        design.Action.NutBassMm
                        + ((design.Action.NutTrebleMm - design.Action.NutBassMm) * i / last);
                    double bottom = design.Nut.SeatMm + FretPlane(each.NutYMm) + over;
                    return new NutSlot(
                        each.Number,
                        each.NutYMm,
                        left * each.NutYMm + (width / 2),
                        each.DiameterMm,
                        bottom,
                        bottom + (design.Nut.SlotShare * each.DiameterMm)
                    );
                }
            ),
        ];
        // The top is the straight line through what the outermost strings need.
        double slope = (slots[^1].TopMm - slots[0].TopMm) / (slots[^1].YMm - slots[0].YMm);
        double Top(double y) => slots[0].TopMm + (slope * (y - slots[0].YMm));
        double lift = slots.Max(slot => slot.TopMm - Top(slot.YMm));
        return new NutPlan(
            width,
            design.Nut.ThicknessMm,
            Top(-width / 2) + lift,
            Top(width / 2) + lift,
            slots
        );
    }
}

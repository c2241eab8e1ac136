using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument.Necks;

namespace Formwright.Instrument.NeckBlanks;

/// <summary>
/// The neck as pieces of wood, before it is carved. Side view: x from the nut towards the tail, z out of the soundboard, as in the instrument frame.
/// </summary>
/// <param name="BoardThicknessMm">Thickness of the board for shaft and head, planed, mm.</param>
/// <param name="BoardWidthMm">Its width, mm.</param>
/// <param name="BoardLengthMm">Its length for shaft, head and joint, mm.</param>
/// <param name="ShaftMm">Length from the nut to the neck's end (in the box, or at the join), mm.</param>
/// <param name="ScarfMm">Length of the scarf's face, mm; 0 without.</param>
/// <param name="ScarfRunMm">Length that the scarf takes along the board, mm.</param>
/// <param name="HeadDropMm">How far the head's end lies behind the neck's face, mm.</param>
/// <param name="StackPieces">Pieces of the heel's stack.</param>
/// <param name="StackLengthMm">Length of a piece of the stack, mm.</param>
/// <param name="StackHeightMm">Height of the stack under the board, as needed, mm.</param>
/// <param name="HeelHeightMm">Height of the heel at the join from the soundboard's plane to the cap, mm.</param>
/// <param name="SoundboardStepMm">Step in the foot for the soundboard, mm; 0 with dowels.</param>
/// <param name="Slot">Rib slot, or null with dowels.</param>
/// <param name="DowelHeightsMm">Places of the dowels under the soundboard's plane, mm.</param>
/// <param name="PostsMm">Tuner posts from the nut along the head's face, mm.</param>
/// <param name="HeadSlotMm">Slot of the head from the nut: where it starts and ends, mm.</param>
/// <param name="Side">Side view of the blank, closed polygon, x and z.</param>
/// <param name="Plan">Half plan of neck and head from the centreline: stations and half widths along the face (head: x below 0).</param>
public sealed record NeckBlank(
    double BoardThicknessMm,
    double BoardWidthMm,
    double BoardLengthMm,
    double ShaftMm,
    double ScarfMm,
    double ScarfRunMm,
    double HeadDropMm,
    int StackPieces,
    double StackLengthMm,
    double StackHeightMm,
    double HeelHeightMm,
    double SoundboardStepMm,
    HeelSlot? Slot,
    IReadOnlyList<double> DowelHeightsMm,
    IReadOnlyList<double> PostsMm,
    (double FromMm, double ToMm) HeadSlotMm,
    IReadOnlyList<Point> Side,
    IReadOnlyList<Point> Plan
)
{
    // Common practice: what is left to plane and carve.
    private const double ThicknessSpareMm = 1.5;
    private const double WidthSpareMm = 6;
    private const double LengthSpareMm = 15;

    /// <summary>The neck blank of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="ribHeightMm">Height of the rib at the heel, mm.</param>
    public static NeckBlank Of(InstrumentDesign design, double ribHeightMm)
    {
        ArgumentNullException.ThrowIfNull(design);
        Guard.Positive(ribHeightMm);
        HeadDesign head = design.Head;
        HeelDesign heel = design.Heel;
        NeckDesign neck = design.Neck;
        double join = design.Identity.JoinMm;
        bool slots = heel.Method == HeelMethod.Slots;
        double foot = slots ? heel.FootMm : 0;
        NeckProfile profile = NeckProfile.Of(neck, join);
        double thickest = Math.Max(
            profile.Places.Max(place => place.ThicknessMm),
            head.Joint == HeadJoint.Scarf ? head.ThicknessMm - head.VeneerMm : 0
        );
        double board = thickest + ThicknessSpareMm;
        double angle = head.AngleDeg * Math.PI / 180;
        bool scarf = head.Joint == HeadJoint.Scarf && angle > 0;
        double run = scarf ? board / Math.Tan(angle) : 0;
        double drop = head.LengthMm * Math.Sin(angle);
        double soundboard = design.Soundboard.EdgeThicknessMm;
        double heelHeight = soundboard + ribHeightMm;
        double stack = Math.Max(0, heelHeight - board);
        double wood = head.ThicknessMm - head.VeneerMm;
        return new NeckBlank(
            head.Joint == HeadJoint.OnePiece
                ? Math.Max(board, drop + (wood * Math.Cos(angle)) + ThicknessSpareMm)
                : board,
            Math.Max(
                Math.Max(head.WidthNutMm, head.WidthTipMm),
                Math.Max(neck.WidthJoinMm, slots ? heel.WidthMm : neck.WidthJoinMm)
            ) + WidthSpareMm,
            join + foot + head.LengthMm + run + LengthSpareMm,
            join + foot,
            scarf ? board / Math.Sin(angle) : 0,
            run,
            drop,
            stack > 0 ? (int)Math.Ceiling(stack / heel.LayerMm) : 0,
            heel.LengthMm + foot + LengthSpareMm,
            stack,
            heelHeight,
            slots ? soundboard : 0,
            slots ? SlotOf(design, ribHeightMm) : null,
            slots ? [] : DowelHeights(heel, heelHeight),
            [.. Enumerable.Range(0, 3).Select(i => head.FirstPostMm + (i * head.PostSpacingMm))],
            (
                head.FirstPostMm - (head.PostSpacingMm / 2) - 4,
                head.FirstPostMm + (2 * head.PostSpacingMm) + (head.PostSpacingMm / 2) + 4
            ),
            SideView(design, profile, foot, heelHeight, soundboard, angle),
            HalfPlan(design, profile, foot)
        );
    }

    private static HeelSlot SlotOf(InstrumentDesign design, double ribHeight)
    {
        HeelDesign heel = design.Heel;
        double rib = design.Ribs.ThicknessMm;
        return new HeelSlot(
            heel.SlotDepthMm,
            heel.WidthMm - (2 * heel.SlotDepthMm),
            rib + heel.WedgeThinMm,
            rib + heel.WedgeThickMm,
            ribHeight,
            Math.Atan((heel.WedgeThickMm - heel.WedgeThinMm) / ribHeight) * 180 / Math.PI
        );
    }

    // Even distances, the outermost 1.5 diameters and more from the ends: an eighth of the height.
    private static double[] DowelHeights(HeelDesign heel, double height)
    {
        double end = Math.Max(1.5 * heel.DowelMm, height / 8);
        return heel.Dowels == 1
            ? [height / 2]
            :
            [
                .. Enumerable
                    .Range(0, heel.Dowels)
                    .Select(i => end + ((height - (2 * end)) * i / (heel.Dowels - 1))),
            ];
    }

    private static List<Point> SideView(
        InstrumentDesign design,
        NeckProfile profile,
        double foot,
        double heelHeight,
        double soundboard,
        double angle
    )
    {
        double join = design.Identity.JoinMm;
        double drop = design.Neck.RampMm;
        double wood = design.Head.ThicknessMm - design.Head.VeneerMm;
        double veneer = design.Head.VeneerMm;
        // The head's wood starts a veneer's thickness behind the neck's face, so that veneer and face meet at the nut.
        Vector along = new(-Math.Cos(angle), -Math.Sin(angle));
        Vector behind = new(Math.Sin(angle), -Math.Cos(angle));
        Point nut = new(0, drop);
        Point face = nut + (behind * veneer);
        Point tip = face + (along * design.Head.LengthMm);
        List<Point> side = [nut, new(join, 0)];
        if (foot > 0)
        {
            side.Add(new(join, -soundboard));
            side.Add(new(join + foot, -soundboard));
            side.Add(new(join + foot, -heelHeight));
        }

        side.Add(new(join, -heelHeight));
        side.AddRange(HeelCurve(design, profile, heelHeight));
        double atNut = profile.At(0).ThicknessMm;
        side.Add(new(Math.Max(0, atNut * Math.Tan(angle / 2)), drop - atNut));
        side.Add(tip + (behind * wood));
        side.Add(tip);
        if (veneer > 0)
        {
            side.Add(face);
        }

        return side;
    }

    // From the cap up and forward into the neck's back: a quarter of an ellipse (a drawing; the maker carves it by eye).
    private static IEnumerable<Point> HeelCurve(
        InstrumentDesign design,
        NeckProfile profile,
        double heelHeight
    )
    {
        double join = design.Identity.JoinMm;
        double length = design.Heel.LengthMm;
        double start = join - length;
        double ramp = design.Neck.RampMm;
        double back = (ramp * (1 - (start / join))) - profile.At(start).ThicknessMm;
        double cap = Math.Min(6, length / 4);
        for (int i = 0; i <= 16; i++)
        {
            double t = Math.PI / 2 * i / 16;
            yield return new Point(
                join - cap - ((length - cap) * (1 - Math.Cos(t))),
                -heelHeight + ((back + heelHeight) * Math.Sin(t))
            );
        }
    }

    private static List<Point> HalfPlan(InstrumentDesign design, NeckProfile profile, double foot)
    {
        HeadDesign head = design.Head;
        double join = design.Identity.JoinMm;
        List<Point> plan =
        [
            new(-head.LengthMm, 0),
            new(-head.LengthMm, head.WidthTipMm / 2),
            new(0, head.WidthNutMm / 2),
            new(0, profile.At(0).WidthMm / 2),
        ];
        plan.AddRange(
            profile
                .Places.Where(place => place.AtMm > 0 && place.AtMm < join)
                .Select(place => new Point(place.AtMm, place.WidthMm / 2))
        );
        plan.Add(new(join, profile.At(join).WidthMm / 2));
        if (foot > 0)
        {
            plan.Add(new(join, design.Heel.WidthMm / 2));
            plan.Add(new(join + foot, design.Heel.WidthMm / 2));
        }

        plan.Add(new(join + foot, 0));
        return plan;
    }
}

using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Mould;

namespace Formwright.Jigs.Spine;

/// <summary>
/// The two feet that carry the board off the bench: one at the nut, one at the spine's end, which stops short of the tail so that a clamp
/// passes under the tail block. A foot that would cover a bolt moves towards the neck until it is clear.
/// </summary>
/// <param name="NeckMm">Face of the foot at the neck, towards the nut, from the nut, mm.</param>
/// <param name="TailMm">Face of the foot at the tail, towards the tail, from the nut, mm.</param>
/// <param name="SpineEndMm">Where the spine ends, from the nut, mm.</param>
/// <param name="LengthMm">A foot along the board, mm.</param>
/// <param name="WidthMm">A foot across the board, mm.</param>
/// <param name="HeightMm">Height of a foot from the bench to the underside of the spine, mm.</param>
/// <param name="ReachMm">How far a clamp must reach in from the board's end to the inner face of the tail block, mm.</param>
/// <param name="RoomMm">Room under the board at the tail, mm.</param>
public sealed record BoardFeet(
    double NeckMm,
    double TailMm,
    double SpineEndMm,
    double LengthMm,
    double WidthMm,
    double HeightMm,
    double ReachMm,
    double RoomMm
)
{
    /// <summary>A foot lower than this leaves no room for fingers under the spine, mm (common practice).</summary>
    public const double LeastHeightMm = 20;

    /// <summary>Room for washer and key round a bolt, mm (common practice).</summary>
    public const double AroundBoltMm = 12;

    /// <summary>Play between the clamp's jaw and the foot, mm (common practice).</summary>
    private const double PlayMm = 10;

    /// <summary>Middle of the foot at the neck, mm.</summary>
    public double NeckMiddleMm => NeckMm + (LengthMm / 2);

    /// <summary>Middle of the foot at the tail, mm.</summary>
    public double TailMiddleMm => TailMm - (LengthMm / 2);

    internal static BoardFeet Of(Guitar guitar, MouldPlan mould, double spineDepthMm)
    {
        WorkboardDesign board = guitar.Design.Workboard;
        FeetDesign feet = board.Feet;
        double reach = board.MarginMm + guitar.Design.Blocks.TailThicknessMm;
        double height = Math.Max(LeastHeightMm, feet.ClampDepthMm - spineDepthMm);
        double end = guitar.TailMm + board.MarginMm - feet.ClampThroatMm - PlayMm;
        return new BoardFeet(
            0,
            ClearOf(mould, feet, end),
            end,
            feet.LengthMm,
            feet.WidthMm,
            height,
            reach,
            height + spineDepthMm
        );
    }

    private static double ClearOf(MouldPlan mould, FeetDesign feet, double end)
    {
        double half = (feet.WidthMm / 2) + AroundBoltMm;
        double at = end;
        foreach (
            double x in mould
                .Fasteners.Where(each => Math.Abs(each.Centre.Y) < half)
                .Select(each => each.Centre.X)
                .OrderDescending()
        )
        {
            if (x > at - feet.LengthMm - AroundBoltMm && x < at + AroundBoltMm)
            {
                at = x - AroundBoltMm;
            }
        }

        return at;
    }
}

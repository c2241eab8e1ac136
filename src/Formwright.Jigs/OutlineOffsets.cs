using Formwright.Curves;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs;

/// <summary>
/// Curves beside the treble half of an outline, in the workboard frame. All tooling is symmetric about the centreline, so a part of the
/// bass side is the mirror of the treble side's; what is not symmetric (marks, bass and treble) is put on afterwards.
/// </summary>
internal sealed class OutlineOffsets(Outline outline, double joinMm, double toleranceMm)
{
    private readonly Chain half = outline.Half;

    /// <summary>
    /// The curve at a distance outside the outline between two half widths: it starts where it leaves <paramref name="heelYMm"/> and ends where
    /// it comes down to <paramref name="tailYMm"/>. On the treble side, y positive, workboard x.
    /// </summary>
    public ArcPath? Between(double outsideMm, double heelYMm, double tailYMm)
    {
        double? from = ArcLengthAtHeel(outsideMm, heelYMm);
        double? to = ArcLengthAtTail(outsideMm, tailYMm);
        if (from is null || to is null || to <= from)
        {
            return null;
        }

        Chain part = half.Part(from.Value, to.Value);
        ICurve? curve = outsideMm == 0 ? part : PathOf(part, outsideMm);
        return curve is null ? null : ArcPaths.Moved(curve.ToArcs(toleranceMm), joinMm);
    }

    /// <summary>The curve at a distance outside the outline from an arc length of the outline to the tail; workboard x, y positive.</summary>
    public ArcPath? From(double arcLengthMm, double outsideMm)
    {
        Chain part = arcLengthMm > 0 ? half.Part(arcLengthMm, half.LengthMm) : half;
        ICurve? curve = outsideMm == 0 ? part : PathOf(part, outsideMm);
        return curve is null ? null : ArcPaths.Moved(curve.ToArcs(toleranceMm), joinMm);
    }

    /// <summary>The place at a distance outside the outline at an arc length of the outline, workboard x, treble y positive.</summary>
    public Point At(double arcLengthMm, double outsideMm)
    {
        Point place = BodyPlace(arcLengthMm, outsideMm);
        return new Point(place.X + joinMm, place.Y);
    }

    /// <summary>Arc length at which the offset curve first reaches a half width, coming from the heel.</summary>
    public double? ArcLengthAtHeel(double outsideMm, double yMm) =>
        Root(outsideMm, yMm, 0, WidestUpper());

    /// <summary>Arc length at which the offset curve comes down to a half width at the tail.</summary>
    public double? ArcLengthAtTail(double outsideMm, double yMm) =>
        Root(outsideMm, yMm, half.LengthMm, WidestLower());

    private static OffsetPath? PathOf(Chain part, double outsideMm)
    {
        // The treble half runs heel to tail with the body on its right, so outside is to its left: positive.
        OffsetResult result = Offset.Of(part, outsideMm);
        return result.Paths.OrderByDescending(path => path.LengthMm).FirstOrDefault();
    }

    private Point BodyPlace(double s, double outsideMm)
    {
        CurvePoint at = half.At(s);
        (double sin, double cos) = Math.SinCos(at.Angle);
        return new Point(at.Position.X - (outsideMm * sin), at.Position.Y + (outsideMm * cos));
    }

    private double WidestUpper() => half.TangentsAlong(0)[0].ArcLengthMm;

    private double WidestLower() => half.TangentsAlong(0)[^1].ArcLengthMm;

    // Bisection from the end on the centreline (y at most 0 there) to the widest place beside it.
    private double? Root(double outsideMm, double yMm, double end, double widest)
    {
        if (BodyPlace(widest, outsideMm).Y < yMm || BodyPlace(end, outsideMm).Y > yMm)
        {
            return BodyPlace(end, outsideMm).Y > yMm ? end : null;
        }

        double low = end;
        double high = widest;
        for (int i = 0; i < 80 && Math.Abs(high - low) > 1e-10; i++)
        {
            double middle = (low + high) / 2;
            if (BodyPlace(middle, outsideMm).Y < yMm)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }
}

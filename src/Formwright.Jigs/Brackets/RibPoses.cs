using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Jigs.Brackets;

/// <summary>
/// Every place of a rib where a bracket can stand: evenly spaced along the free piece of rib, without those where the face would rock or the bracket
/// would run into the ribs, the neck, or its mirror on the other side.
/// </summary>
internal static class RibPoses
{
    /// <summary>Places on each rib. It can be divided by 1 to 7, 10, 12, 14 and 15, so that evenly spaced contacts are among them.</summary>
    public const int Count = 420;

    /// <summary>How far a rib may reach into a bracket by rounding, mm.</summary>
    private const double RoundingMm = 0.02;
    private const double OutlineStepMm = 1;
    private const double NeckMm = 600;

    /// <summary>The places, from heel to tail; the index is that on the rib and null where no bracket can stand.</summary>
    public static RibPose?[] Of(RibLine rib, BracketShape shape, JigDesign design)
    {
        Point[] outline = Samples(rib.Half);
        double reach = design.Bracket.BaseMm + shape.WidthMm;
        RibPose?[] poses = new RibPose?[Count + 1];
        Point[] neck =
        [
            new(rib.HeelXMm - NeckMm, -rib.NeckHalfMm),
            new(rib.HeelXMm, -rib.NeckHalfMm),
            new(rib.HeelXMm, rib.NeckHalfMm),
            new(rib.HeelXMm - NeckMm, rib.NeckHalfMm),
        ];
        for (int i = 0; i <= Count; i++)
        {
            double arc = rib.FromMm + ((rib.ToMm - rib.FromMm) * i / Count);
            if (FaceFinder.At(rib, shape, arc) is not { } contact)
            {
                continue;
            }

            IReadOnlyList<Point> body = shape.Placed(contact);
            bool crossesCentre = body.Any(corner => corner.Y < design.ClearanceMm / 2);
            if (
                !crossesCentre
                && Bodies.Distance(body, neck) >= design.ClearanceMm
                && IsClear(body, contact.Middle, outline, reach)
            )
            {
                (double from, double to) = shape.BoltRange(contact.Face, rib.RibHeightMm(arc));
                poses[i] = new RibPose(contact, from, to, body);
            }
        }

        return poses;
    }

    /// <summary>The distance of a bracket from the ribs, mm: below 0, how far they reach into it.</summary>
    public static double Deepest(IReadOnlyList<Point> body, Chain half, double stepMm)
    {
        double least = double.PositiveInfinity;
        for (double s = 0; s < half.LengthMm; s += stepMm)
        {
            least = Math.Min(least, Bodies.Distance(body, half.At(s).Position));
        }

        return least;
    }

    // A place is deep inside a convex body when it is deep behind every side of it: most places fail at the first.
    private static bool IsClear(
        IReadOnlyList<Point> body,
        Point middle,
        Point[] outline,
        double reach
    )
    {
        Span<Vector> inward = stackalloc Vector[body.Count];
        for (int i = 0; i < body.Count; i++)
        {
            Vector side = body[(i + 1) % body.Count] - body[i];
            inward[i] = side.Left * (1 / side.Length);
        }

        foreach (Point place in outline)
        {
            if (Math.Abs(place.X - middle.X) < reach && Math.Abs(place.Y - middle.Y) < reach)
            {
                int sides = 0;
                while (sides < body.Count && (place - body[sides]).Dot(inward[sides]) > RoundingMm)
                {
                    sides++;
                }

                if (sides == body.Count)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Point[] Samples(Chain half)
    {
        int count = (int)Math.Ceiling(half.LengthMm / OutlineStepMm);
        double[] arcs = [.. Enumerable.Range(0, count + 1).Select(i => half.LengthMm * i / count)];
        CurvePoint[] places = new CurvePoint[arcs.Length];
        half.Sample(arcs, places);
        return [.. places.Select(place => place.Position)];
    }
}

using Formwright.Curves;

namespace Formwright.Jigs.Brackets;

/// <summary>
/// Sets a flat face against an outline. On a bout it is tangent: the outline is convex all along the face, so it touches in one place.
/// In the hollow of the waist its two edges touch: they are the ends of a chord as long as the face is wide. Where the outline
/// changes its bend under the face it would rest on one edge and rock, and no bracket is set there.
/// </summary>
internal static class FaceFinder
{
    /// <summary>The contact in the middle of which an arc length lies; null where none is stable. The wider face goes to the bouts, the narrower to the waist.</summary>
    public static FaceContact? At(RibLine rib, BracketShape shape, double arcMm)
    {
        double front = shape.FaceWidthMm(BracketFace.Front);
        double rear = shape.FaceWidthMm(BracketFace.Rear);
        BracketFace narrow = front <= rear ? BracketFace.Front : BracketFace.Rear;
        BracketFace wide = front <= rear ? BracketFace.Rear : BracketFace.Front;
        return Tangent(rib, shape, wide, arcMm)
            ?? Tangent(rib, shape, narrow, arcMm)
            ?? TwoEdges(rib, shape, narrow, arcMm);
    }

    private static FaceContact? Tangent(
        RibLine rib,
        BracketShape shape,
        BracketFace face,
        double arcMm
    )
    {
        // The outline under a face of width w is at most a little longer than w while it turns by less than a quarter; a tenth covers that.
        double half = 0.55 * shape.FaceWidthMm(face);
        foreach ((double from, double to) in rib.Hollows)
        {
            if (arcMm + half > from && arcMm - half < to)
            {
                return null;
            }
        }

        CurvePoint at = rib.Half.At(arcMm);
        return new FaceContact(
            ContactKind.Tangent,
            face,
            arcMm,
            arcMm,
            arcMm,
            at.Position,
            at.Angle + (Math.PI / 2),
            0,
            0,
            at.RadiusMm
        );
    }

    private static FaceContact? TwoEdges(
        RibLine rib,
        BracketShape shape,
        BracketFace face,
        double arcMm
    )
    {
        Chain chain = rib.Half;
        double width = shape.FaceWidthMm(face);
        (double from, double to) = rib.Hollows.FirstOrDefault(hollow =>
            arcMm - (width / 2) >= hollow.FromMm && arcMm + (width / 2) <= hollow.ToMm
        );
        if (to <= from)
        {
            return null;
        }

        double low = width / 2;
        double high = Math.Min(arcMm - from, to - arcMm);
        if (Chord(high) < width)
        {
            return null;
        }

        // The chord grows with the arc: halve until nothing is left of the interval.
        for (int i = 0; i < 60 && high - low > 1e-12; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Chord(middle) < width ? (middle, high) : (low, middle);
        }

        Point a = chain.At(arcMm - high).Position;
        Point b = chain.At(arcMm + high).Position;
        double along = (b - a).Angle;
        double radius = chain.At(arcMm).RadiusMm;
        return new FaceContact(
            ContactKind.TwoEdges,
            face,
            arcMm,
            arcMm - high,
            arcMm + high,
            a.Towards(b, 0.5),
            along + (Math.PI / 2),
            Deepest(chain, arcMm - high, arcMm + high, a, along),
            width * width / (8 * radius),
            radius
        );

        double Chord(double half) =>
            chain.At(arcMm - half).Position.DistanceTo(chain.At(arcMm + half).Position);
    }

    // In a hollow the tangent turns one way only: the deepest place is where it runs along the chord.
    private static double Deepest(Chain chain, double from, double to, Point edge, double along)
    {
        double low = from;
        double high = to;
        for (int i = 0; i < 60 && high - low > 1e-12; i++)
        {
            double middle = (low + high) / 2;
            bool isBefore = Math.IEEERemainder(chain.At(middle).Angle - along, 2 * Math.PI) < 0;
            (low, high) = isBefore ? (middle, high) : (low, middle);
        }

        return Math.Max(
            0,
            -(chain.At((low + high) / 2).Position - edge).Dot(Vector.At(along).Left)
        );
    }
}

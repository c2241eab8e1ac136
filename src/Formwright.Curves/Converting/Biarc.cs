namespace Formwright.Curves.Converting;

/// <summary>
/// Two arcs that lead from one place and tangent to another and meet tangentially, with equal tangent lengths (the usual biarc; Bolton,
/// Biarc curves, CAD 7, 1975, from memory).
/// </summary>
internal readonly record struct Biarc(ArcPiece First, ArcPiece Second)
{
    internal static Biarc Between(CurvePoint from, CurvePoint to)
    {
        Vector t0 = from.Tangent;
        Vector t1 = to.Tangent;
        Vector v = to.Position - from.Position;
        double along = v.Dot(t0 + t1);
        double squares = v.Dot(v);
        double d =
            squares / (along + Math.Sqrt((along * along) + (2 * (1 - t0.Dot(t1)) * squares)));
        Point joint = from.Position + ((v + ((t0 - t1) * d)) * 0.5);
        return new(
            new(from.Position, joint, Bulge(t0, joint - from.Position)),
            new(joint, to.Position, Bulge(to.Position - joint, t1))
        );
    }

    /// <summary>Half the turning of an arc is the angle between its chord and its tangent.</summary>
    private static double Bulge(Vector before, Vector after) =>
        Math.Tan(0.5 * Math.Atan2(before.Cross(after), before.Dot(after)));
}

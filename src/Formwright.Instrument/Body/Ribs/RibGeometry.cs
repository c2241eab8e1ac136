using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Instrument.Body.Ribs;

/// <summary>
/// The treble rib between its soundboard edge and its back edge. The outline is its outer face; its middle lies half the thickness inside.
/// </summary>
/// <param name="Outline">The outline.</param>
/// <param name="Depth">Depth of the back under the soundboard's inner face at the rim, mm.</param>
/// <param name="Dome">Height of the soundboard over the rim, mm.</param>
/// <param name="ThicknessMm">Thickness of the rib, mm.</param>
internal sealed record RibGeometry(
    Outline Outline,
    IHeightField Depth,
    IHeightField Dome,
    double ThicknessMm
)
{
    /// <summary>Length of the whole middle line, centreline to centreline, mm.</summary>
    internal double LengthMm => MiddleLength(Outline.HalfPerimeterMm);

    /// <summary>
    /// Length of the middle line from the heel to the place at an arc length of the outline: the offset's length element is (1 + κ t/2) ds to
    /// the right of the chain, so its length is s + (t/2)(θ(s) - θ(0)), exact.
    /// </summary>
    internal double MiddleLength(double outlineMm, double insideMm = double.NaN)
    {
        double inside = double.IsNaN(insideMm) ? ThicknessMm / 2 : insideMm;
        Chain half = Outline.Half;
        return outlineMm + (inside * (half.At(outlineMm).Angle - half.Start.Angle));
    }

    /// <summary>The rib at an arc length of the outline from the heel; its length counts from the tail's centreline.</summary>
    internal RibPoint At(double outlineMm)
    {
        CurvePoint outer = Outline.Half.At(outlineMm);
        Vector outward = outer.Normal;
        Point middle = outer.Position - (outward * (ThicknessMm / 2));
        HeightSample depth = Depth.At(middle);
        double front = -Dome.HeightAt(middle);
        double curvature = -outer.Curvature;
        double radius = (1 / curvature) - (ThicknessMm / 2);
        double bevel = -Math.Atan(depth.SlopeAlong(outward)) * 180 / Math.PI;
        return new RibPoint(
            LengthMm - MiddleLength(outlineMm),
            front,
            depth.HeightMm,
            middle.X,
            middle.Y,
            curvature == 0 ? double.PositiveInfinity : radius,
            bevel
        );
    }

    /// <summary>A place inside the rib at an arc length of the outline.</summary>
    internal Point Inside(double outlineMm, double insideMm)
    {
        CurvePoint outer = Outline.Half.At(outlineMm);
        return outer.Position - (outer.Normal * insideMm);
    }

    /// <summary>
    /// Arc length of the outline where the line at a distance inside it stands at a distance from the centreline, near the heel or the tail (mm).
    /// Bisected on the stretch up to the first bout, on which it moves away from the centreline throughout.
    /// </summary>
    internal double WhereAcross(double yMm, double insideMm, bool nearTail)
    {
        double total = Outline.HalfPerimeterMm;
        IReadOnlyList<ChainPoint> turns = Outline.Half.TangentsAlong(0);
        double near = nearTail ? total : 0;
        double far = nearTail
            ? turns.Select(turn => turn.ArcLengthMm).DefaultIfEmpty(total / 2).Max()
            : turns.Select(turn => turn.ArcLengthMm).DefaultIfEmpty(total / 2).Min();
        if (!(Inside(far, insideMm).Y > yMm))
        {
            return far;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = (near + far) / 2;
            (near, far) = Inside(middle, insideMm).Y < yMm ? (middle, far) : (near, middle);
        }

        return (near + far) / 2;
    }
}

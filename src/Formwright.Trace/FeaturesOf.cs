using Formwright.Curves;

namespace Formwright.Trace;

/// <summary>Reads bouts, waist and ends off an outline.</summary>
public static class FeaturesOf
{
    /// <summary>A turn of the half width counts when it changes by more than this share of the largest to both sides (tuned).</summary>
    private const double Prominence = 0.005;

    /// <summary>A curve has left a line when it is this far from it, mm (tuned: above the usual tolerance, below what a ruler shows).</summary>
    private const double StraightMm = 0.1;

    /// <summary>Shortest half of a flat that is told, mm.</summary>
    private const double ShortestFlatMm = 5;

    /// <summary>The features of an outline.</summary>
    public static TracedFeatures Outline(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        List<ChainPoint> turns = [.. outline.Half.TangentsAlong(0)];
        double least = turns.Count > 0 ? Prominence * turns.Max(turn => turn.Position.Y) : 0;
        while (turns.Count > 1)
        {
            int smallest = Enumerable
                .Range(0, turns.Count - 1)
                .MinBy(i => Math.Abs(turns[i + 1].Position.Y - turns[i].Position.Y));
            if (Math.Abs(turns[smallest + 1].Position.Y - turns[smallest].Position.Y) >= least)
            {
                break;
            }

            turns.RemoveRange(smallest, 2);
        }

        bool isGuitar =
            turns.Count == 3
            && turns[1].Position.Y < turns[0].Position.Y
            && turns[1].Position.Y < turns[2].Position.Y;
        ChainPoint? widest = turns.Count > 0 ? turns.MaxBy(turn => turn.Position.Y) : null;
        double heel = FlatMm(outline.Half);
        double tail = FlatMm(outline.Half.Reversed());
        return new TracedFeatures(
            outline.BodyLengthMm,
            isGuitar ? Feature(turns[0]) : null,
            isGuitar ? Feature(turns[1]) : null,
            isGuitar ? Feature(turns[2])
                : widest is { } place ? Feature(place)
                : null,
            heel,
            tail,
            heel > 0 ? double.PositiveInfinity : outline.Half.Start.RadiusMm,
            tail > 0 ? double.PositiveInfinity : outline.Half.End.RadiusMm
        );
    }

    private static TracedFeature Feature(ChainPoint place) =>
        new(place.Position.X, 2 * place.Position.Y, place.Curve.RadiusMm);

    /// <summary>
    /// Full width of the straight piece at the start of a half. Beyond a flat the bend grows evenly, so that the curve leaves the line by
    /// the cube of the way: where it has left it eightfold it is twice as far from the flat's end. A round end leaves it by the square, and
    /// the same reckoning then gives less than nothing.
    /// </summary>
    private static double FlatMm(Chain half)
    {
        double near = LeavesAt(half, StraightMm);
        double far = LeavesAt(half, 8 * StraightMm);
        double end = (2 * near) - far;
        return end > ShortestFlatMm ? 2 * end : 0;
    }

    private static double LeavesAt(Chain half, double mm)
    {
        CurvePoint start = half.Start;
        double s = 0;
        while (
            s < half.LengthMm / 2
            && Math.Abs((half.At(s).Position - start.Position).Dot(start.Normal)) < mm
        )
        {
            s += 0.25;
        }

        return s;
    }
}

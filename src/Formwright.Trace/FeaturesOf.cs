using Formwright.Curves;

namespace Formwright.Trace;

/// <summary>Reads bouts, waist and ends off an outline.</summary>
public static class FeaturesOf
{
    /// <summary>A turn of the half width counts when it changes by more than this share of the largest to both sides (tuned).</summary>
    private const double Prominence = 0.005;

    /// <summary>A piece is straight when it leaves a line by less than this, mm.</summary>
    private const double StraightMm = 0.05;

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

    /// <summary>Full width of the straight piece at the start of a half: as far as it leaves its tangent by no more than a hair.</summary>
    private static double FlatMm(Chain half)
    {
        CurvePoint start = half.Start;
        double straight = 0;
        for (double s = 1; s < half.LengthMm / 4; s += 1)
        {
            if (Math.Abs((half.At(s).Position - start.Position).Dot(start.Normal)) > StraightMm)
            {
                break;
            }

            straight = s;
        }

        // A round end leaves its tangent too, only sooner: it is a flat when it is far longer than its own roundness explains.
        double round = Math.Sqrt(2 * StraightMm * half.LengthMm / Math.PI);
        return straight > Math.Max(ShortestFlatMm, 2 * round) ? 2 * straight : 0;
    }
}

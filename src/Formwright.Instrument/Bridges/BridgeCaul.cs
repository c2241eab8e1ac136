using Formwright.Curves;
using Formwright.Fields;
using Formwright.Instrument.Body.Soundboard;

namespace Formwright.Instrument.Bridges;

/// <summary>The caul inside the box under the bridge.</summary>
public static class BridgeCaul
{
    private const double RoomMm = 1;

    /// <summary>The caul for a bridge: as large as it, its face that of the soundboard, notched where braces pass.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="soundboard">Its braces.</param>
    /// <param name="dome">Height of the soundboard over the datum, body frame.</param>
    public static Caul Of(BridgePlan bridge, SoundboardPlan soundboard, IHeightField dome)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(soundboard);
        ArgumentNullException.ThrowIfNull(dome);
        return new Caul(
            bridge.LengthMm,
            bridge.WidthMm,
            bridge.Across,
            bridge.Along,
            [.. soundboard.Braces.SelectMany(brace => Notches(brace, bridge))]
        );
    }

    private static IEnumerable<CaulNotch> Notches(Brace brace, BridgePlan bridge)
    {
        double width = brace.Shape.WidthMm + (2 * RoomMm);
        Vector half = new(
            (bridge.WidthMm + brace.Shape.WidthMm) / 2,
            (bridge.LengthMm + brace.Shape.WidthMm) / 2
        );
        for (int i = 1; i < brace.Line.Count; i++)
        {
            if (
                Clip(
                    brace.Line[i - 1],
                    brace.Line[i],
                    bridge.Middle - half,
                    bridge.Middle + half
                ) is
                { } part
            )
            {
                yield return new CaulNotch(
                    brace.Name,
                    part.From,
                    part.To,
                    width,
                    brace.Shape.HeightMm + RoomMm
                );
            }
        }
    }

    /// <summary>The part of a straight line within an upright rectangle (Liang and Barsky 1984), or null.</summary>
    internal static (Point From, Point To)? Clip(Point from, Point to, Point min, Point max)
    {
        double low = 0;
        double high = 1;
        Vector d = to - from;
        (double P, double Q)[] sides =
        [
            (-d.X, from.X - min.X),
            (d.X, max.X - from.X),
            (-d.Y, from.Y - min.Y),
            (d.Y, max.Y - from.Y),
        ];
        foreach ((double p, double q) in sides)
        {
            if (p == 0)
            {
                if (q < 0)
                {
                    return null;
                }
            }
            else if (p < 0)
            {
                low = Math.Max(low, q / p);
            }
            else
            {
                high = Math.Min(high, q / p);
            }
        }

        return low < high ? (from.Towards(to, low), from.Towards(to, high)) : null;
    }
}

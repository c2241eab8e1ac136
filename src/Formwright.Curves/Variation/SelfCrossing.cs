namespace Formwright.Curves.Variation;

/// <summary>Whether half an outline crosses itself.</summary>
internal static class SelfCrossing
{
    /// <summary>The first place found where the half crosses itself; null when it does not.</summary>
    /// <remarks>
    /// A half that always moves on along the centreline can't. Otherwise it is cut where it turns back in u; two pieces that are each
    /// monotone in u are compared over the stations they share.
    /// </remarks>
    internal static ChainPoint? First(Chain half)
    {
        double[] cuts =
        [
            0,
            .. half.TangentsAlong(0.5 * Math.PI).Select(place => place.ArcLengthMm),
            half.LengthMm,
        ];
        List<(double From, double To)> pieces = [];
        for (int i = 1; i < cuts.Length; i++)
        {
            if (
                cuts[i] - cuts[i - 1] > 1e-6
                && Math.Abs(half.At(cuts[i]).Position.X - half.At(cuts[i - 1]).Position.X) > 1e-6
            )
            {
                pieces.Add((cuts[i - 1], cuts[i]));
            }
        }

        if (pieces.Count == 1)
        {
            return null;
        }

        Chain[] parts = [.. pieces.Select(piece => half.Part(piece.From, piece.To))];
        for (int i = 0; i < parts.Length; i++)
        {
            for (int j = i + 1; j < parts.Length; j++)
            {
                if (Between(parts[i], parts[j]) is { } found)
                {
                    return new(pieces[i].From + found.ArcLengthMm, found.Curve);
                }
            }
        }

        return null;
    }

    private static ChainPoint? Between(Chain one, Chain other)
    {
        double low = Math.Max(one.Box.Min.X, other.Box.Min.X) + 1e-6;
        double high = Math.Min(one.Box.Max.X, other.Box.Max.X) - 1e-6;
        const int Stations = 200;
        int side = 0;
        for (int i = 0; i <= Stations && low < high; i++)
        {
            double x = low + ((high - low) * i / Stations);
            IReadOnlyList<ChainPoint> a = one.CrossingsAtX(x);
            IReadOnlyList<ChainPoint> b = other.CrossingsAtX(x);
            if (a.Count == 0 || b.Count == 0)
            {
                continue;
            }

            int now = Math.Sign(a[0].Position.Y - b[0].Position.Y);
            if (side != 0 && now != 0 && now != side)
            {
                return a[0];
            }

            side = now == 0 ? side : now;
        }

        return null;
    }
}

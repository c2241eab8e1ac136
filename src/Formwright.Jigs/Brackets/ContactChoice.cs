namespace Formwright.Jigs.Brackets;

/// <summary>
/// Which contacts one instrument takes from the slots that there are: for each number of brackets the choice whose largest gap is smallest, and
/// among those the one whose gaps are most even (least sum of squares). Exact, by dynamic programming over contacts and numbers of brackets.
/// </summary>
internal static class ContactChoice
{
    /// <summary>For each number of brackets from none to one in every slot: the largest gap, and the contacts (slot, place in its list).</summary>
    /// <param name="rib">The rib.</param>
    /// <param name="slots">The contacts of each slot, in order from heel to tail.</param>
    /// <param name="mayFollow">Whether two places of the rib can be used together, the first nearer the heel.</param>
    public static IReadOnlyList<(double GapMm, IReadOnlyList<(int Slot, int Contact)> Chosen)> Of(
        CoverRib rib,
        IReadOnlyList<IReadOnlyList<CoverContact>> slots,
        Func<int, int, bool> mayFollow
    )
    {
        (int Slot, int Contact)[] all =
        [
            .. slots
                .SelectMany(
                    (list, slot) => list.Select((_, contact) => (Slot: slot, Contact: contact))
                )
                .OrderBy(each => slots[each.Slot][each.Contact].EnterMm)
                .ThenBy(each => each.Slot),
        ];
        CoverContact At(int i) => slots[all[i].Slot][all[i].Contact];

        // Which contacts may come before which, once.
        List<int>[] before = new List<int>[all.Length];
        for (int i = 0; i < all.Length; i++)
        {
            before[i] = [];
            for (int k = 0; k < i; k++)
            {
                if (all[k].Slot < all[i].Slot && mayFollow(At(k).Pose, At(i).Pose))
                {
                    before[i].Add(k);
                }
            }
        }

        List<(double, IReadOnlyList<(int, int)>)> answers = [(rib.ToMm - rib.FromMm, [])];
        double[] least = [.. Enumerable.Range(0, all.Length).Select(i => Gap(rib.FromMm, At(i)))];
        List<double[]> layers = [least];
        for (int count = 1; count <= slots.Count; count++)
        {
            double gap = double.PositiveInfinity;
            for (int i = 0; i < all.Length; i++)
            {
                gap = Math.Min(gap, Math.Max(layers[^1][i], rib.ToMm - At(i).LeaveMm));
            }

            if (!double.IsFinite(gap))
            {
                break;
            }

            answers.Add((gap, Even(gap, count)));
            double[] next = new double[all.Length];
            for (int i = 0; i < all.Length; i++)
            {
                next[i] = double.PositiveInfinity;
                foreach (int k in before[i])
                {
                    next[i] = Math.Min(next[i], Math.Max(layers[^1][k], Gap(At(k).LeaveMm, At(i))));
                }
            }

            layers.Add(next);
        }

        return answers;

        // Among the choices whose gaps are all within the limit, the one of least sum of squares.
        IReadOnlyList<(int, int)> Even(double limit, int count)
        {
            double within = limit + 1e-9;
            double[] sum = new double[all.Length];
            int[,] from = new int[count, all.Length];
            for (int i = 0; i < all.Length; i++)
            {
                double first = Gap(rib.FromMm, At(i));
                sum[i] = first <= within ? first * first : double.PositiveInfinity;
            }

            for (int taken = 1; taken < count; taken++)
            {
                double[] next = new double[all.Length];
                for (int i = 0; i < all.Length; i++)
                {
                    next[i] = double.PositiveInfinity;
                    foreach (int k in before[i])
                    {
                        double gap = Gap(At(k).LeaveMm, At(i));
                        double total = sum[k] + (gap * gap);
                        if (gap <= within && total < next[i])
                        {
                            next[i] = total;
                            from[taken, i] = k;
                        }
                    }
                }

                sum = next;
            }

            int last = -1;
            double best = double.PositiveInfinity;
            for (int i = 0; i < all.Length; i++)
            {
                double rest = rib.ToMm - At(i).LeaveMm;
                double total = sum[i] + (rest * rest);
                if (rest <= within && total < best)
                {
                    (best, last) = (total, i);
                }
            }

            List<(int, int)> chosen = [];
            for (int taken = count - 1; taken >= 0 && last >= 0; taken--)
            {
                chosen.Insert(0, all[last]);
                last = from[taken, last];
            }

            return chosen;
        }
    }

    private static double Gap(double held, CoverContact next) => Math.Max(0, next.EnterMm - held);
}

namespace Formwright.Jigs.Brackets;

/// <summary>
/// The fewest slots that hold every rib with no gap longer than asked. Each slot holds one bracket and offers each rib a set of contacts.
/// </summary>
/// <remarks>
/// Slots are taken from heel to tail, layer by layer. A rib that is held up to some place is served best by the farthest contact that the next slot
/// offers within the gap, whatever comes after, so a choice of slots is known by its last slot and how far each rib is held; a choice that holds
/// no rib farther than another with the same last slot is dropped (dynamic programming with dominance, Bellman 1957). A choice is also dropped
/// when the slots that are left could not hold a rest even if they stood anywhere.
/// </remarks>
public sealed class SlotCover
{
    private readonly IReadOnlyList<CoverRib> ribs;
    private readonly IReadOnlyList<IReadOnlyList<CoverContact>[]> slots;
    private readonly Func<int, int, bool> mayNeighbour;
    private readonly sbyte[,] neighbours;

    /// <param name="ribs">The ribs.</param>
    /// <param name="slots">For each slot, in order from heel to tail, the contacts that it offers each rib, in order.</param>
    /// <param name="mayNeighbour">Whether a slot may be followed by another of the list.</param>
    public SlotCover(
        IReadOnlyList<CoverRib> ribs,
        IReadOnlyList<IReadOnlyList<CoverContact>[]> slots,
        Func<int, int, bool> mayNeighbour
    )
    {
        ArgumentNullException.ThrowIfNull(ribs);
        ArgumentNullException.ThrowIfNull(slots);
        ArgumentNullException.ThrowIfNull(mayNeighbour);
        this.ribs = ribs;
        this.slots = slots;
        this.mayNeighbour = mayNeighbour;
        neighbours = new sbyte[slots.Count, slots.Count];
    }

    /// <summary>The fewest slots for a largest gap.</summary>
    /// <param name="gapMm">Longest piece of rib without a contact, mm, above 0.</param>
    /// <param name="most">Most slots to try.</param>
    /// <param name="room">Choices kept in a layer; beyond it the least promising go, and the search is no longer whole.</param>
    public CoverAnswer Fewest(double gapMm, int most, int room = 4000)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gapMm);
        int bound = LowerBound(gapMm, most);
        bool isWhole = true;
        for (int count = bound; count <= most; count++)
        {
            (int[]? found, bool cut) = With(count, gapMm, room);
            if (found is not null)
            {
                return new CoverAnswer(found, bound, isWhole);
            }

            isWhole &= !cut;
        }

        return new CoverAnswer([], bound, isWhole);
    }

    /// <summary>Contacts that the neediest rib needs, wherever they are set.</summary>
    public int LowerBound(double gapMm, int most) =>
        ribs.Max(rib => rib.Held(gapMm, most).Count - 1);

    /// <summary>A choice of exactly so many slots for a largest gap; whether choices were left out for want of room.</summary>
    public (int[]? Slots, bool WasCut) With(int count, double gapMm, int room = 4000)
    {
        double[][] needed = [.. ribs.Select(rib => Needed(rib, gapMm, count))];
        Label start = new(-1, [.. ribs.Select(rib => rib.FromMm)], null);
        if (!IsHopeful(start.Held, needed, count))
        {
            return (null, false);
        }

        if (count == 0)
        {
            return ([], false);
        }

        List<Label> layer = [start];
        bool wasCut = false;
        for (int taken = 1; taken <= count && layer.Count > 0; taken++)
        {
            List<Label>?[] next = new List<Label>?[slots.Count];
            foreach (Label label in layer)
            {
                Extend(label, next, needed, count - taken, gapMm);
            }

            layer = [.. next.Where(list => list is not null).SelectMany(list => list!)];
            if (layer.Count > room)
            {
                wasCut = true;
                int left = count - taken;
                layer =
                [
                    .. layer.OrderByDescending(label => Slack(label, needed, left)).Take(room),
                ];
            }
        }

        Label? best = layer.MaxBy(label => Slack(label, needed, 0));
        return (best?.Chosen(), wasCut);
    }

    private static double[] Needed(CoverRib rib, double gapMm, int count)
    {
        IReadOnlyList<double> held = rib.Held(gapMm, count);
        return [.. Enumerable.Range(0, count + 1).Select(i => held[Math.Min(i, held.Count - 1)])];
    }

    private static bool IsHopeful(double[] held, double[][] needed, int left)
    {
        for (int m = 0; m < held.Length; m++)
        {
            if (held[m] < needed[m][left])
            {
                return false;
            }
        }

        return true;
    }

    private static double Slack(Label label, double[][] needed, int left)
    {
        double least = double.PositiveInfinity;
        double sum = 0;
        for (int m = 0; m < needed.Length; m++)
        {
            double over = label.Held[m] - needed[m][left];
            least = Math.Min(least, over);
            sum += over;
        }

        return least + (0.01 * sum / needed.Length);
    }

    // A new choice goes into the list of its last slot unless one there holds every rib at least as far.
    private static void Keep(List<Label> list, Label label)
    {
        for (int i = list.Count - 1; i >= 0; i--)
        {
            bool less = false;
            bool more = false;
            for (int m = 0; m < label.Held.Length && !(less && more); m++)
            {
                less |= label.Held[m] < list[i].Held[m];
                more |= label.Held[m] > list[i].Held[m];
            }

            if (!more)
            {
                return;
            }

            if (!less)
            {
                list.RemoveAt(i);
            }
        }

        list.Add(label);
    }

    private void Extend(Label label, List<Label>?[] next, double[][] needed, int left, double gapMm)
    {
        double[] held = new double[ribs.Count];
        for (int slot = label.Slot + 1; slot < slots.Count; slot++)
        {
            bool hopeful = true;
            for (int m = 0; m < held.Length && hopeful; m++)
            {
                held[m] = Farthest(slots[slot][m], label.Held[m], gapMm);
                hopeful = held[m] >= needed[m][left];
            }

            if (hopeful && MayNeighbour(label.Slot, slot))
            {
                Keep(next[slot] ??= [], new Label(slot, [.. held], label));
            }
        }
    }

    private static double Farthest(IReadOnlyList<CoverContact> contacts, double held, double gapMm)
    {
        for (int i = contacts.Count - 1; i >= 0; i--)
        {
            if (contacts[i].EnterMm <= held + gapMm)
            {
                return Math.Max(held, contacts[i].LeaveMm);
            }
        }

        return held;
    }

    private bool MayNeighbour(int before, int after)
    {
        if (before < 0)
        {
            return true;
        }

        if (neighbours[before, after] == 0)
        {
            neighbours[before, after] = (sbyte)(mayNeighbour(before, after) ? 1 : -1);
        }

        return neighbours[before, after] > 0;
    }

    private sealed record Label(int Slot, double[] Held, Label? Before)
    {
        public int[] Chosen()
        {
            List<int> chosen = [];
            for (Label? at = this; at is { Slot: >= 0 }; at = at.Before)
            {
                chosen.Insert(0, at.Slot);
            }

            return [.. chosen];
        }
    }
}

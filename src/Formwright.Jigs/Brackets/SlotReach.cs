namespace Formwright.Jigs.Brackets;

/// <summary>What one slot can do for each rib.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Contacts">For each rib, the contacts that a bracket in the slot can make, from heel to tail.</param>
internal sealed record SlotReach(SlotLine Slot, IReadOnlyList<CoverContact>[] Contacts)
{
    /// <summary>Mean share of the rib at which it is touched, for the order from heel to tail.</summary>
    public double Order { get; private init; }

    /// <summary>Tries every place of every rib.</summary>
    public static SlotReach Of(SlotLine slot, IReadOnlyList<RibPose?[]> poses)
    {
        IReadOnlyList<CoverContact>[] contacts = new IReadOnlyList<CoverContact>[poses.Count];
        double order = 0;
        int touched = 0;
        for (int m = 0; m < poses.Count; m++)
        {
            List<CoverContact> found = [];
            for (int i = 0; i < poses[m].Length; i++)
            {
                if (poses[m][i] is { } pose && pose.BoltIn(slot) is not null)
                {
                    found.Add(new CoverContact(pose.Contact.FromMm, pose.Contact.ToMm, i));
                    order += i;
                    touched++;
                }
            }

            contacts[m] = found;
        }

        return new SlotReach(slot, contacts) { Order = touched > 0 ? order / touched : -1 };
    }

    /// <summary>Whether no bracket in this slot can meet one in the slot after it, on any rib, and the wood between them holds.</summary>
    /// <param name="after">The slot nearer the tail.</param>
    /// <param name="poses">The places of the ribs.</param>
    /// <param name="apartMm">Least distance between the slots' middle lines.</param>
    /// <param name="spareMm">How much longer both slots may become at each end.</param>
    /// <param name="clearanceMm">Least distance between brackets.</param>
    public bool MayPrecede(
        SlotReach after,
        IReadOnlyList<RibPose?[]> poses,
        double apartMm,
        double spareMm,
        double clearanceMm
    )
    {
        SlotLine here = Slot.Longer(spareMm);
        SlotLine there = after.Slot.Longer(spareMm);
        if (Bodies.SegmentDistance(here.From, here.To, there.From, there.To) < apartMm)
        {
            return false;
        }

        for (int m = 0; m < poses.Count; m++)
        {
            if (Contacts[m].Count == 0 || after.Contacts[m].Count == 0)
            {
                continue;
            }

            int last = Contacts[m][^1].Pose;
            int first = after.Contacts[m][0].Pose;
            if (
                last >= first
                || Bodies.Distance(poses[m][last]!.Body, poses[m][first]!.Body) < clearanceMm
            )
            {
                return false;
            }
        }

        return true;
    }
}

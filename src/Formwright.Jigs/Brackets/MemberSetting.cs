namespace Formwright.Jigs.Brackets;

/// <summary>Turns the chosen contacts of one instrument into what the maker sets and measures.</summary>
internal static class MemberSetting
{
    private const double StepMm = 0.5;

    public static JigMember Of(
        RibLine rib,
        BracketShape shape,
        SlotLine[] slots,
        (int Slot, int Pose)[] chosen,
        RibPose?[] poses,
        int? fewest
    )
    {
        List<BracketSetting> settings = [];
        double held = rib.FromMm;
        (double Gap, double From, double To) worst = (0, held, held);
        foreach ((int slot, int index) in chosen)
        {
            RibPose pose = poses[index]!;
            FaceContact contact = pose.Contact;
            (double along, double behind) = pose.BoltIn(slots[slot])!.Value;
            double height = rib.RibHeightMm(contact.ArcMm);
            (double from, double to) = shape.ContactHeights(contact.Face, height);
            double gap = Math.Max(0, contact.FromMm - held);
            worst = gap > worst.Gap ? (gap, held, contact.FromMm) : worst;
            settings.Add(
                new BracketSetting(
                    slot + 1,
                    contact,
                    contact.Middle.X - rib.HeelXMm,
                    along,
                    behind - shape.LeanMm(contact.Face, height),
                    Math.IEEERemainder(contact.OutwardRad - slots[slot].AngleRad, 2 * Math.PI),
                    contact.Middle + (contact.Outward * behind),
                    from,
                    to,
                    gap,
                    pose.Body
                )
            );
            held = contact.ToMm;
        }

        worst = rib.ToMm - held > worst.Gap ? (rib.ToMm - held, held, rib.ToMm) : worst;
        return new JigMember(
            rib,
            settings,
            worst.Gap,
            worst.From,
            worst.To,
            fewest,
            Between(settings),
            settings.Count == 0
                ? 0
                : Math.Max(0, settings.Max(each => -RibPoses.Deepest(each.Body, rib.Half, StepMm)))
        );
    }

    // Brackets of one side among themselves, and each with its mirror on the other side.
    private static double Between(List<BracketSetting> settings)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < settings.Count; i++)
        {
            least = Math.Min(least, 2 * settings[i].Body.Min(corner => corner.Y));
            for (int k = 0; k < i; k++)
            {
                least = Math.Min(least, Bodies.Distance(settings[k].Body, settings[i].Body));
            }
        }

        return least;
    }
}

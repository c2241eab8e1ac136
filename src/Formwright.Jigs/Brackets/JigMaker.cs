using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Instrument;

namespace Formwright.Jigs.Brackets;

/// <summary>Makes the slotted board and sets its brackets, for one instrument or a family.</summary>
public static class JigMaker
{
    /// <summary>How far a bolt's centre may stand beside the middle of its slot, mm: a tenth of its play in a medium clearance hole (ISO 273).</summary>
    public const double OffSlotMm = 0.02;

    /// <summary>Most slots on a side.</summary>
    public const int MostSlots = 24;

    /// <summary>Steps of the search for even gaps once the number of slots is known.</summary>
    private const int EvenSteps = 6;

    /// <summary>The jig of one instrument, by its own design.</summary>
    public static JigPlan Of(Guitar guitar)
    {
        ArgumentNullException.ThrowIfNull(guitar);
        return Of([guitar], guitar.Design.Jig);
    }

    /// <summary>The jig of a family: the fewest slots that serve all, or the settings in the slots that there are.</summary>
    /// <param name="guitars">The instruments.</param>
    /// <param name="design">Board and bracket.</param>
    /// <exception cref="ArgumentException">There is no instrument.</exception>
    public static JigPlan Of(IReadOnlyList<Guitar> guitars, JigDesign design)
    {
        ArgumentNullException.ThrowIfNull(guitars);
        ArgumentNullException.ThrowIfNull(design);
        if (guitars.Count == 0)
        {
            throw new ArgumentException("A jig needs an instrument.", nameof(guitars));
        }

        BracketShape shape = new(design.Bracket);
        RibLine[] ribs = [.. guitars.Select(guitar => new RibLine(guitar, design.Align))];
        RibPose?[][] poses = [.. ribs.Select(rib => RibPoses.Of(rib, shape, design))];
        CoverRib[] covers = [.. ribs.Zip(poses, Cover)];
        bool isGiven = design.Slots.Count > 0;
        (SlotReach[] slots, int bound, bool isWhole) = isGiven
            ? Given(design, poses, covers)
            : Found(design, ribs, poses, covers);
        double hole = Mould.BoltHoles.ClearanceMm(design.Bracket.BoltDiameterMm);
        Choice[] choices =
        [
            .. ribs.Select((_, m) => Choice.Of(covers[m], slots, m, poses[m], design)),
        ];
        int pairs = choices.Max(choice => choice.Wanted);
        (int Slot, int Pose)[][] chosen = [.. choices.Select(choice => choice.Within(pairs))];
        SlotLine[] lines = [.. slots.Select(slot => slot.Slot)];
        if (!isGiven)
        {
            (lines, chosen) = Trimmed(lines, chosen, poses, design.SpareMm);
        }

        JigMember[] members =
        [
            .. ribs.Select(
                (rib, m) =>
                    MemberSetting.Of(rib, shape, lines, chosen[m], poses[m], choices[m].Fewest)
            ),
        ];
        JigHardware hardware = new(
            2 * pairs,
            design.Bracket.BoltDiameterMm,
            JigParts.BoltLengthMm(design, shape),
            hole
        );
        JigPlan plan = new(
            design,
            shape,
            lines,
            members,
            2 * pairs,
            bound,
            isWhole,
            isGiven,
            [.. JigParts.Of(design, shape, lines, ribs, hole, 2 * pairs)],
            hardware,
            []
        );
        return plan with { Findings = [.. JigChecks.Of(plan)] };
    }

    private static CoverRib Cover(RibLine rib, RibPose?[] poses) =>
        new(
            rib.FromMm,
            rib.ToMm,
            [
                .. poses
                    .Select((pose, i) => (Pose: pose, Index: i))
                    .Where(each => each.Pose is not null)
                    .Select(each => new CoverContact(
                        each.Pose!.Contact.FromMm,
                        each.Pose.Contact.ToMm,
                        each.Index
                    )),
            ],
            (rib.ToMm - rib.FromMm) / RibPoses.Count
        );

    private static (SlotReach[] Slots, int Bound, bool IsWhole) Given(
        JigDesign design,
        RibPose?[][] poses,
        CoverRib[] covers
    )
    {
        SlotReach[] slots =
        [
            .. design
                .Slots.Select(slot =>
                    SlotReach.Of(
                        new SlotLine(
                            new Point(slot.FromXMm, slot.FromYMm),
                            new Point(slot.ToXMm, slot.ToYMm)
                        ),
                        poses
                    )
                )
                .OrderBy(slot => (slot.Slot.From.X + slot.Slot.To.X) / 2),
        ];
        int bound = covers.Max(cover => cover.Held(design.LargestGapMm, MostSlots).Count - 1);
        return (slots, bound, true);
    }

    private static (SlotReach[] Slots, int Bound, bool IsWhole) Found(
        JigDesign design,
        RibLine[] ribs,
        RibPose?[][] poses,
        CoverRib[] covers
    )
    {
        double apart = Mould.BoltHoles.ClearanceMm(design.Bracket.BoltDiameterMm) + design.WebMm;
        SlotReach[] candidates =
        [
            .. SlotCandidates
                .Of(ribs, poses, design.SpareMm)
                .Where(slot => slot.Longer(design.SpareMm).LeastYMm >= apart / 2)
                .Select(slot => SlotReach.Of(slot, poses))
                .Where(slot => slot.Order >= 0)
                .OrderBy(slot => slot.Order),
        ];
        SlotCover cover = new(
            covers,
            [.. candidates.Select(slot => slot.Contacts)],
            (before, after) =>
                candidates[before]
                    .MayPrecede(candidates[after], poses, apart, design.SpareMm, design.ClearanceMm)
        );
        CoverAnswer answer = cover.Fewest(design.LargestGapMm, MostSlots);
        IReadOnlyList<int> best = answer.Slots;
        if (best.Count > 0)
        {
            // As many slots, but with gaps as small as they can do.
            double low = design.LargestGapMm / 2;
            double high = design.LargestGapMm;
            for (int i = 0; i < EvenSteps; i++)
            {
                double gap = (low + high) / 2;
                int[]? smaller = cover.With(best.Count, gap).Slots;
                (low, high) = smaller is null ? (gap, high) : (low, gap);
                best = smaller ?? best;
            }
        }

        return ([.. best.Select(i => candidates[i])], answer.LowerBound, answer.IsWhole);
    }

    // A new slot need only be as long as its bolts travel, and a little more; one that nobody uses is not cut.
    private static (SlotLine[] Lines, (int Slot, int Pose)[][] Chosen) Trimmed(
        SlotLine[] lines,
        (int Slot, int Pose)[][] chosen,
        RibPose?[][] poses,
        double spareMm
    )
    {
        List<SlotLine> kept = [];
        int[] number = new int[lines.Length];
        for (int k = 0; k < lines.Length; k++)
        {
            double[] places =
            [
                .. chosen.SelectMany(
                    (list, m) =>
                        list.Where(each => each.Slot == k)
                            .Select(each => poses[m][each.Pose]!.BoltIn(lines[k])!.Value.AlongMm)
                ),
            ];
            if (places.Length == 0)
            {
                continue;
            }

            number[k] = kept.Count;
            double length = lines[k].LengthMm;
            Point At(double along) => lines[k].From.Towards(lines[k].To, along / length);
            kept.Add(new SlotLine(At(places.Min() - spareMm), At(places.Max() + spareMm)));
        }

        return (
            [.. kept],
            [
                .. chosen.Select(list =>
                    list.Select(each => (number[each.Slot], each.Pose)).ToArray()
                ),
            ]
        );
    }

    /// <summary>What one instrument can do with the slots.</summary>
    private sealed record Choice(
        CoverRib Rib,
        IReadOnlyList<(double GapMm, IReadOnlyList<(int Slot, int Pose)> Chosen)> Answers,
        double LargestGapMm
    )
    {
        /// <summary>Fewest brackets within the largest gap, or null.</summary>
        public int? Fewest
        {
            get
            {
                for (int count = 0; count < Answers.Count; count++)
                {
                    if (Answers[count].GapMm <= LargestGapMm + 1e-9)
                    {
                        return count;
                    }
                }

                return null;
            }
        }

        /// <summary>Brackets that it asks for: the fewest, or where the gap can't be kept those that make it smallest.</summary>
        public int Wanted => Fewest ?? Best(Answers.Count - 1);

        public static Choice Of(
            CoverRib rib,
            SlotReach[] slots,
            int member,
            RibPose?[] poses,
            JigDesign design
        )
        {
            IReadOnlyList<CoverContact>[] contacts =
            [
                .. slots.Select(slot => slot.Contacts[member]),
            ];
            return new Choice(
                rib,
                [
                    .. ContactChoice
                        .Of(
                            rib,
                            contacts,
                            (before, after) =>
                                Bodies.Distance(poses[before]!.Body, poses[after]!.Body)
                                >= design.ClearanceMm
                        )
                        .Select(answer =>
                            (
                                answer.GapMm,
                                (IReadOnlyList<(int, int)>)
                                    [
                                        .. answer.Chosen.Select(each =>
                                            (each.Slot, contacts[each.Slot][each.Contact].Pose)
                                        ),
                                    ]
                            )
                        ),
                ],
                design.LargestGapMm
            );
        }

        /// <summary>The contacts that give the smallest gap with at most so many brackets on a side.</summary>
        public (int Slot, int Pose)[] Within(int brackets) => [.. Answers[Best(brackets)].Chosen];

        private int Best(int most)
        {
            int best = 0;
            for (int count = 1; count <= Math.Min(most, Answers.Count - 1); count++)
            {
                best = Answers[count].GapMm < Answers[best].GapMm - 1e-9 ? count : best;
            }

            return best;
        }
    }
}

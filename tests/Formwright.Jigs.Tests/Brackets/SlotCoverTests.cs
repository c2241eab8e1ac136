using CsCheck;
using Formwright.Jigs.Brackets;
using Formwright.Testing;
using Xunit;

namespace Formwright.Jigs.Tests.Brackets;

/// <summary>The search for the fewest slots against every subset tried one by one.</summary>
public sealed class SlotCoverTests
{
    private const double LengthMm = 100;

    [Fact]
    public void Fewest_slots_are_those_of_brute_force()
    {
        Gen<double[]> places = Gen.Double[0, LengthMm].Array[0, 3];
        Gen<(double[][][] Slots, bool[] Apart, double Gap)> cases =
            from ribs in Gen.Int[1, 3]
            from slots in places.Array[ribs].Array[0, 8]
            from apart in Gen.Bool.Array[64]
            from gap in Gen.Double[25, 70]
            select (slots, apart, gap);
        int solved = 0;
        cases.Holds(
            each =>
            {
                int ribs = each.Slots.Length > 0 ? each.Slots[0].Length : 1;
                CoverRib[] rib =
                [
                    .. Enumerable
                        .Range(0, ribs)
                        .Select(_ => new CoverRib(0, LengthMm, Dense(), 0.5)),
                ];
                IReadOnlyList<CoverContact>[][] slots =
                [
                    .. each.Slots.Select(slot =>
                        slot.Select(list =>
                                (IReadOnlyList<CoverContact>)
                                    [.. list.Order().Select(at => new CoverContact(at, at, 0))]
                            )
                            .ToArray()
                    ),
                ];
                bool May(int a, int b) => each.Apart[(a * 8) + b];
                CoverAnswer found = new SlotCover(rib, slots, May).Fewest(each.Gap, 8);
                int? expected = BruteForce(slots, ribs, each.Gap, May);
                Interlocked.Add(ref solved, expected is null ? 0 : 1);
                return (expected ?? 0) == found.Slots.Count
                    && found.IsWhole
                    && (expected is null || found.LowerBound <= expected);
            },
            iter: 4000
        );
        Assert.True(solved > 200, $"only {solved} cases have an answer");
    }

    // n contacts part a rib into n + 1 pieces.
    [Theory]
    [InlineData(100, 0)]
    [InlineData(50.5, 1)]
    [InlineData(34, 2)]
    [InlineData(21, 4)]
    public void The_bound_of_a_rib_that_can_be_touched_anywhere_is_the_closed_form(
        double gapMm,
        int contacts
    )
    {
        CoverRib rib = new(0, LengthMm, Dense(), 0.01);
        Assert.Equal(contacts, rib.Held(gapMm, 20).Count - 1);
        Assert.Equal((int)Math.Ceiling(LengthMm / gapMm) - 1, contacts);
    }

    [Fact]
    public void Contact_choice_has_the_smallest_gap_of_all_choices()
    {
        Gen<(double[][] Slots, bool[] Apart)> cases =
            from slots in Gen.Double[0, LengthMm].Array[0, 4].Array[0, 5]
            from apart in Gen.Bool.Array[400]
            select (slots, apart);
        cases.Holds(
            each =>
            {
                int pose = 0;
                IReadOnlyList<CoverContact>[] slots =
                [
                    .. each.Slots.Select(list =>
                        (IReadOnlyList<CoverContact>)
                            [.. list.Order().Select(at => new CoverContact(at, at, pose++))]
                    ),
                ];
                bool May(int a, int b) => each.Apart[(a * 20) + b];
                CoverRib rib = new(0, LengthMm, [], 0);
                var answers = ContactChoice.Of(rib, slots, May);
                double[] expected = Smallest(slots, May);
                for (int count = 0; count < expected.Length; count++)
                {
                    bool has = count < answers.Count;
                    if (double.IsFinite(expected[count]) != has)
                    {
                        return false;
                    }

                    if (!has)
                    {
                        return true;
                    }

                    double held = 0;
                    double largest = 0;
                    foreach ((int slot, int contact) in answers[count].Chosen)
                    {
                        CoverContact at = slots[slot][contact];
                        largest = Math.Max(largest, at.EnterMm - held);
                        held = at.LeaveMm;
                    }

                    largest = Math.Max(largest, LengthMm - held);
                    if (
                        Math.Abs(answers[count].GapMm - expected[count]) > 1e-9
                        || Math.Abs(largest - expected[count]) > 1e-8
                        || answers[count].Chosen.Count != count
                    )
                    {
                        return false;
                    }
                }

                return true;
            },
            iter: 2000
        );
    }

    private static CoverContact[] Dense() =>
        [.. Enumerable.Range(0, 1001).Select(i => new CoverContact(i * 0.1, i * 0.1, i))];

    private static int? BruteForce(
        IReadOnlyList<CoverContact>[][] slots,
        int ribs,
        double gap,
        Func<int, int, bool> may
    )
    {
        int? fewest = null;
        for (int set = 0; set < 1 << slots.Length; set++)
        {
            int[] chosen = [.. Enumerable.Range(0, slots.Length).Where(i => (set & (1 << i)) != 0)];
            bool apart = chosen.Zip(chosen.Skip(1)).All(pair => may(pair.First, pair.Second));
            if (
                apart
                && (fewest is null || chosen.Length < fewest)
                && Enumerable.Range(0, ribs).All(m => Holds([.. chosen.Select(i => slots[i][m])]))
            )
            {
                fewest = chosen.Length;
            }
        }

        return fewest;

        // Every slot takes one of its contacts or none.
        bool Holds(IReadOnlyList<CoverContact>[] lists)
        {
            return From(0, 0);

            bool From(int slot, double held)
            {
                if (slot == lists.Length)
                {
                    return LengthMm - held <= gap;
                }

                return From(slot + 1, held)
                    || lists[slot]
                        .Any(each =>
                            each.EnterMm <= held + gap
                            && From(slot + 1, Math.Max(held, each.LeaveMm))
                        );
            }
        }
    }

    private static double[] Smallest(IReadOnlyList<CoverContact>[] slots, Func<int, int, bool> may)
    {
        double[] least = new double[slots.Length + 1];
        Array.Fill(least, double.PositiveInfinity);
        Walk(0, 0, 0, 0, null);
        return least;

        void Walk(int slot, double held, double largest, int count, CoverContact? last)
        {
            if (slot == slots.Length)
            {
                least[count] = Math.Min(least[count], Math.Max(largest, LengthMm - held));
                return;
            }

            Walk(slot + 1, held, largest, count, last);
            foreach (CoverContact each in slots[slot])
            {
                if (
                    last is not { } before
                    || (each.EnterMm >= before.EnterMm && may(before.Pose, each.Pose))
                )
                {
                    Walk(
                        slot + 1,
                        each.LeaveMm,
                        Math.Max(largest, each.EnterMm - held),
                        count + 1,
                        each
                    );
                }
            }
        }
    }
}

using System.Collections.Concurrent;
using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Jigs.Brackets;
using NetTopologySuite.Geometries;
using Xunit;

namespace Formwright.Jigs.Tests.Brackets;

/// <summary>
/// Brackets are rebuilt here from the figures that a maker sets (slot, place, turn, bolt) and held against dense samples of the chain and
/// against polygons of an independent library, not against the code that placed them.
/// </summary>
public sealed class BracketJigTests
{
    private const double StepMm = 0.05;
    private static readonly ConcurrentDictionary<string, JigPlan> Each = new();

    public static TheoryData<string> Plans => [.. Examples.Models, "family"];

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_face_is_tangent_on_the_bouts_and_touches_with_both_edges_at_the_waist(
        string which
    )
    {
        JigPlan plan = Plan(which);
        int tangents = 0;
        int edges = 0;
        foreach (JigMember member in plan.Members)
        {
            CurvePoint[] dense = Dense(member.Rib.Half);
            foreach (BracketSetting setting in member.Settings)
            {
                Rebuilt bracket = Rebuild(plan, setting);
                double farthest = double.NegativeInfinity;
                CurvePoint nearest = default;
                double behind = 0;
                foreach (CurvePoint at in dense)
                {
                    Vector from = at.Position - bracket.Middle;
                    if (Math.Abs(from.Dot(bracket.Along)) > bracket.HalfFaceMm + 1e-6)
                    {
                        continue;
                    }

                    double outward = from.Dot(bracket.Outward);
                    if (Math.Abs(outward) < 20)
                    {
                        behind = Math.Min(behind, outward);
                        (farthest, nearest) =
                            outward > farthest ? (outward, at) : (farthest, nearest);
                    }
                }

                Assert.InRange(farthest, -0.01, 0.01);
                if (setting.Contact.Kind == ContactKind.Tangent)
                {
                    tangents++;
                    double turn = Math.IEEERemainder(nearest.Angle - bracket.Along.Angle, Math.PI);
                    Assert.InRange(turn * 180 / Math.PI, -0.1, 0.1);
                    Assert.True(nearest.Curvature <= 0);
                }
                else
                {
                    edges++;
                    foreach (int side in new[] { -1, 1 })
                    {
                        Curves.Point edge =
                            bracket.Middle + (bracket.Along * (side * bracket.HalfFaceMm));
                        Assert.InRange(dense.Min(at => at.Position.DistanceTo(edge)), 0, 0.03);
                    }

                    Assert.Equal(-behind, setting.Contact.GapMm, 0.001);
                    Assert.Equal(
                        setting.Contact.GapEstimateMm,
                        setting.Contact.GapMm,
                        0.1 * setting.Contact.GapMm
                    );
                }
            }
        }

        Assert.True(tangents > 0 && edges > 0, $"{tangents} tangent, {edges} on two edges");
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void No_bracket_meets_another_the_ribs_or_the_neck(string which)
    {
        JigPlan plan = Plan(which);
        foreach (JigMember member in plan.Members)
        {
            Polygon body = Body(member);
            Polygon[] brackets =
            [
                .. member.Settings.SelectMany(setting =>
                {
                    Rebuilt bracket = Rebuild(plan, setting);
                    return new[] { bracket.Body(1), bracket.Body(-1) };
                }),
            ];
            double least = double.PositiveInfinity;
            for (int i = 0; i < brackets.Length; i++)
            {
                // Along the face they touch: an area of a fiftieth of a mm times the face is rounding.
                Assert.True(brackets[i].Intersection(body).Area < 0.02 * 28, member.Name);
                for (int k = 0; k < i; k++)
                {
                    least = Math.Min(least, brackets[i].Distance(brackets[k]));
                }
            }

            Assert.True(least >= plan.Design.ClearanceMm - 1e-6, $"{member.Name}: {least}");
            Assert.Equal(least, member.BetweenBracketsMm, 1e-6);
            Assert.True(member.IntoBracketMm < 0.02);
            double neck = member.Rib.NeckHalfMm;
            Geometry handle = GeometryFactory.Default.ToGeometry(
                new Envelope(member.Rib.HeelXMm - 400, member.Rib.HeelXMm, -neck, neck)
            );
            Assert.All(
                brackets,
                bracket => Assert.True(bracket.Distance(handle) >= plan.Design.ClearanceMm - 1e-6)
            );
        }
    }

    [Theory]
    [MemberData(nameof(Plans))]
    public void Bolts_stand_in_both_slots_and_the_gaps_are_those_reported(string which)
    {
        JigPlan plan = Plan(which);
        BracketDesign bracket = plan.Design.Bracket;
        foreach (JigMember member in plan.Members)
        {
            double held = member.Rib.FromMm;
            double largest = 0;
            Assert.Equal(
                member.Settings.Select(setting => setting.Slot).Order().Distinct(),
                member.Settings.Select(setting => setting.Slot)
            );
            foreach (BracketSetting setting in member.Settings)
            {
                SlotLine slot = plan.Slots[setting.Slot - 1];
                Assert.InRange(setting.AlongSlotMm, 0, slot.LengthMm);
                Assert.InRange(
                    Bodies.ToSegment(setting.Bolt, slot.From, slot.To),
                    0,
                    JigMaker.OffSlotMm
                );
                double fromFront =
                    setting.Contact.Face == BracketFace.Front
                        ? setting.BoltMm
                        : bracket.BaseMm - setting.BoltMm;
                Assert.InRange(fromFront, bracket.BoltFromMm - 1e-9, bracket.BoltToMm + 1e-9);
                Assert.Equal(setting.Contact.FromMm - held, setting.GapBeforeMm, 1e-9);
                largest = Math.Max(largest, setting.GapBeforeMm);
                held = setting.Contact.ToMm;
                Assert.Equal(setting.HeightFromMm, bracket.ReliefHeightMm);
                Assert.InRange(setting.HeightToMm, 80, bracket.HeightMm);
            }

            largest = Math.Max(largest, member.Rib.ToMm - held);
            Assert.Equal(largest, member.LargestGapMm, 1e-9);
            Assert.True(largest <= plan.Design.LargestGapMm);
        }

        // Round waists are hollow behind a flat face; nothing else is to be seen to.
        Assert.All(plan.Findings, finding => Assert.Same(JigRules.WaistGap, finding.Rule));
    }

    [Fact]
    public void The_family_takes_as_few_slots_as_its_neediest_instrument_alone()
    {
        JigPlan plan = Plan("family");
        Assert.Equal(plan.LowerBound, plan.Slots.Count);
        Assert.True(plan.IsFewest);
        Assert.Equal(2 * plan.Slots.Count, plan.Brackets);

        // The bound from outside: n contacts part the free rib into n + 1 gaps, and two edges hold a face's width of the waist.
        double needed = plan.Members.Max(member =>
            Math.Ceiling(
                (member.Rib.ToMm - member.Rib.FromMm - plan.Design.LargestGapMm)
                    / (plan.Design.LargestGapMm + 21)
            )
        );
        Assert.True(plan.LowerBound >= needed);
        Assert.All(
            Examples.Models,
            model => Assert.True(Plan(model).Slots.Count <= plan.Slots.Count)
        );
    }

    [Fact]
    public void Slots_found_for_the_family_serve_each_instrument_when_they_are_given()
    {
        JigPlan family = Plan("family");
        JigDesign given = family.Design with
        {
            Slots =
            [
                .. family.Slots.Select(slot => new JigSlotDesign(
                    slot.From.X,
                    slot.From.Y,
                    slot.To.X,
                    slot.To.Y
                )),
            ],
        };
        JigPlan plan = JigMaker.Of([Examples.Guitar("dunlin")], given);
        Assert.True(plan.IsGiven);
        Assert.Equal(family.Slots.Count, plan.Slots.Count);
        Assert.True(plan.LargestGapMm <= family.Members[1].LargestGapMm + 0.5);
    }

    [Theory]
    [InlineData(93)]
    [InlineData(88)]
    public void A_leaning_face_touches_at_one_height_and_the_bolt_is_measured_at_its_foot(
        double angle
    )
    {
        JigDesign design = Examples.Design("heron").Jig;
        JigPlan plan = JigMaker.Of(
            [Examples.Guitar("heron")],
            design with
            {
                Bracket = design.Bracket with { FrontAngleDeg = angle, RearAngleDeg = angle },
            }
        );
        double slope = Math.Tan((angle - 90) * Math.PI / 180);
        Assert.NotEmpty(plan.Members[0].Settings);
        foreach (BracketSetting setting in plan.Members[0].Settings)
        {
            double height = angle > 90 ? design.Bracket.HeightMm : design.Bracket.ReliefHeightMm;
            Assert.Equal(height, setting.HeightFromMm, 1e-9);
            Assert.Equal(height, setting.HeightToMm, 1e-9);

            // From the bolt forward to the foot of the face, and on by what it leans up to there.
            Curves.Point touching =
                setting.Bolt - (setting.Contact.Outward * (setting.BoltMm + (height * slope)));
            Assert.Equal(0, touching.DistanceTo(setting.Contact.Middle), 1e-9);
            double front =
                setting.Contact.Face == BracketFace.Front
                    ? setting.BoltMm
                    : design.Bracket.BaseMm - setting.BoltMm;
            Assert.InRange(front, design.Bracket.BoltFromMm - 1e-9, design.Bracket.BoltToMm + 1e-9);
        }
    }

    [Fact]
    public void Slots_are_open_through_the_board_on_both_sides_and_leave_a_web()
    {
        JigPlan plan = Plan("family");
        Parts.Part board = plan.Parts[0];
        Assert.Equal(2 * plan.Slots.Count, board.Insides.Count);
        Polygon[] slots = [.. board.Insides.Select(Polygons.Of)];
        Polygon edge = Polygons.Of(board.Outside);
        for (int i = 0; i < slots.Length; i++)
        {
            Assert.True(edge.Contains(slots[i]));
            Assert.True(
                edge.ExteriorRing.Distance(slots[i])
                    >= plan.Design.EdgeMm - (plan.Hardware.HoleMm / 2) - 1e-6
            );
            SlotLine line = plan.Slots[i % plan.Slots.Count];
            double radius = plan.Hardware.HoleMm / 2;
            Assert.Equal(
                (line.LengthMm * 2 * radius) + (Math.PI * radius * radius),
                slots[i].Area,
                0.05
            );
            for (int k = 0; k < i; k++)
            {
                Assert.True(slots[i].Distance(slots[k]) >= plan.Design.WebMm - 1e-6);
            }
        }
    }

    private static JigPlan Plan(string which) => Each.GetOrAdd(which, Make);

    private static JigPlan Make(string which) =>
        which == "family"
            ? JigMaker.Of(
                [.. Examples.Models.Select(Examples.Guitar)],
                Examples.Design("heron").Jig
            )
            : JigMaker.Of(Examples.Guitar(which));

    private static Polygon Body(JigMember member)
    {
        Chain half = member.Rib.Half;
        List<Coordinate> ring = [];
        for (double s = 0; s < half.LengthMm; s += 0.1)
        {
            Curves.Point at = half.At(s).Position;
            ring.Add(new Coordinate(at.X, at.Y));
        }

        Curves.Point tail = half.End.Position;
        ring.Add(new Coordinate(tail.X, tail.Y));
        ring.AddRange(ring[1..^1].AsEnumerable().Reverse().Select(c => new Coordinate(c.X, -c.Y)));
        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }

    private static CurvePoint[] Dense(Chain half)
    {
        double[] arcs =
        [
            .. Enumerable
                .Range(0, (int)(half.LengthMm / StepMm) + 1)
                .Select(i => Math.Min(i * StepMm, half.LengthMm)),
        ];
        CurvePoint[] places = new CurvePoint[arcs.Length];
        half.Sample(arcs, places);
        return places;
    }

    // What the maker does: slide the bolt to its place, turn the bracket out of the slot, push it until the bolt is so far behind the face.
    private static Rebuilt Rebuild(JigPlan plan, BracketSetting setting)
    {
        SlotLine slot = plan.Slots[setting.Slot - 1];
        double angle = Math.Atan2(slot.To.Y - slot.From.Y, slot.To.X - slot.From.X);
        Curves.Point bolt =
            slot.From + (new Vector(Math.Cos(angle), Math.Sin(angle)) * setting.AlongSlotMm);
        double turned = angle + setting.TurnRad;
        Vector outward = new(Math.Cos(turned), Math.Sin(turned));
        BracketDesign bracket = plan.Design.Bracket;
        bool front = setting.Contact.Face == BracketFace.Front;
        double near = front ? bracket.FrontFaceMm : bracket.RearFaceMm;
        double far = front ? bracket.RearFaceMm : bracket.FrontFaceMm;
        double slope = Math.Tan(
            ((front ? bracket.FrontSlopeDeg : bracket.RearSlopeDeg) - 90) * Math.PI / 180
        );
        double other = Math.Tan(
            ((front ? bracket.RearSlopeDeg : bracket.FrontSlopeDeg) - 90) * Math.PI / 180
        );
        double widest = ((far / 2) + (other * bracket.BaseMm) - (near / 2)) / (slope + other);
        return new Rebuilt(
            bolt - (outward * setting.BoltMm),
            outward,
            near / 2,
            [(0, near / 2), (widest, (near / 2) + (slope * widest)), (bracket.BaseMm, far / 2)]
        );
    }

    private sealed record Rebuilt(
        Curves.Point Middle,
        Vector Outward,
        double HalfFaceMm,
        (double Depth, double Half)[] Profile
    )
    {
        public Vector Along => new(-Outward.Y, Outward.X);

        public Polygon Body(int side)
        {
            List<Coordinate> ring =
            [
                .. Profile.Select(each => Corner(each.Depth, each.Half)),
                .. Profile.Reverse().Select(each => Corner(each.Depth, -each.Half)),
            ];
            ring.Add(ring[0].Copy());
            return new Polygon(
                new LinearRing([.. ring.Select(c => new Coordinate(c.X, side * c.Y))])
            );
        }

        private Coordinate Corner(double depth, double half)
        {
            Curves.Point place = Middle + (Outward * depth) + (Along * half);
            return new Coordinate(place.X, place.Y);
        }
    }
}

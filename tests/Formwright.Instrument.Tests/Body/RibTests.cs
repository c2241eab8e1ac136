using CsCheck;
using Formwright.Curves;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Fields;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Ribs;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Body;

public sealed class RibTests
{
    private const string Plain = """
        [heel]
        method = "dowels"
        """;

    private static readonly InstrumentDesign Doweled = Demo.Design(more: Plain);

    private static Region RegionOf(Outline outline)
    {
        Polyline all = outline.Closed.ToPolyline(0.001);
        return Region.Of(all.Points, all.ErrorMm);
    }

    private sealed class Flat(Region region) : IHeightField
    {
        public Region Region => region;

        public HeightPeak Peak => default;

        public double HeightAt(Point place) => 0;

        public HeightSample At(Point place) => default;
    }

    private static RibPlan Ribs(Outline outline, BackDesign back, double thickness = 2)
    {
        Region region = RegionOf(outline);
        InstrumentDesign design = Doweled with
        {
            Ribs = Doweled.Ribs with { ThicknessMm = thickness },
        };
        return RibMaker.Of(
            design,
            outline,
            new Flat(region),
            new BackField(back, outline.BodyLengthMm, region)
        );
    }

    private static BackDesign Back(BackKind kind, double depth, double along, double across) =>
        Doweled.Back with
        {
            Kind = kind,
            DepthHeelMm = depth,
            DepthTailMm = depth,
            LongRadiusMm = along,
            CrossRadiusMm = across,
        };

    // A round outline under a spherical back with its top over the middle: the rib is equally high all round,
    // D + √(R² - (r - t/2)²) - √(R² - r²) for a depth of D on the outline.
    [Fact]
    public void RoundUnderASphereIsConstant() =>
        Gen.Select(Gen.Double[100, 220], Gen.Double[60, 110], Gen.Double[600, 9000])
            .Holds(
                (r, depth, sphere) =>
                {
                    RibPlan ribs = Ribs(Demo.Circle(r), Back(BackKind.Sphere, depth, sphere, 0));
                    double middle = r - 1;
                    double expected =
                        depth
                        + Math.Sqrt((sphere * sphere) - (middle * middle))
                        - Math.Sqrt((sphere * sphere) - (r * r));
                    Assert.All(ribs.Points, at => Assert.Equal(expected, at.HeightMm, 1e-9));
                    Assert.Equal(Math.PI * middle, ribs.LengthMm, 1e-9);
                    Assert.Equal(Math.PI * middle * expected, ribs.AreaMm2, 1e-5);
                },
                iter: 20
            );

    // Under a cylinder along the centreline: D - (R - √(R² - y²)), y = (r - t/2) sin φ, φ = s/(r - t/2) from the tail.
    [Fact]
    public void RoundUnderACylinderIsTheClosedForm() =>
        Gen.Select(Gen.Double[100, 220], Gen.Double[60, 110], Gen.Double[500, 9000])
            .Holds(
                (r, depth, arch) =>
                {
                    RibPlan ribs = Ribs(Demo.Circle(r), Back(BackKind.Arches, depth, 0, arch));
                    double middle = r - 1;
                    double Height(double s)
                    {
                        double y = middle * Math.Sin(s / middle);
                        return depth - (arch - Math.Sqrt((arch * arch) - (y * y)));
                    }

                    Assert.All(
                        ribs.Points,
                        at => Assert.Equal(Height(at.AlongMm), at.HeightMm, 1e-8)
                    );
                    // Simpson over 2000 pieces, independent of the pattern.
                    double area = 0;
                    double step = Math.PI * middle / 2000;
                    for (int i = 0; i <= 2000; i++)
                    {
                        area +=
                            (
                                i is 0 or 2000 ? 1
                                : i % 2 == 0 ? 2
                                : 4
                            )
                            * Height(i * step)
                            * step
                            / 3;
                    }

                    Assert.Equal(1, ribs.AreaMm2 / area, 1e-6);
                },
                iter: 20
            );

    // Strain t/2R with R = r - t/2 at mid-thickness; the thickness that bends just reaches the limit.
    [Fact]
    public void StrainAndBendableThicknessAgree()
    {
        RibPlan ribs = Ribs(Demo.Circle(120), Back(BackKind.Arches, 90, 0, 0));
        RibBend bend = Assert.Single(ribs.Bends);
        Assert.Equal(119, bend.TightestMm, 1e-9);
        Assert.Equal(100 * 2 / 238.0, bend.StrainPercent, 1e-9);
        Assert.Equal(180, bend.TurnDeg, 1e-9);
        Assert.Equal(118 / 1.05, bend.FormRadiusMm, 1e-9);
        double thickest = bend.ThicknessThatBendsMm;
        RibBend limit = Assert.Single(
            Ribs(Demo.Circle(120), Back(BackKind.Arches, 90, 0, 0), thickest).Bends
        );
        Assert.Equal(Doweled.Ribs.BendStrainPercent, limit.StrainPercent, 1e-9);
    }

    public static TheoryData<string> Examples => [.. new[] { "heron", "dunlin", "plover" }];

    // The middle line of a half outline that turns by a half turn is shorter by π t/2; arc lengths are exact.
    [Theory]
    [MemberData(nameof(Examples))]
    public void LengthIsThatOfTheMiddleLine(string name)
    {
        BodyPlan plan = Demo.Plan(name, Plain);
        double t = plan.Guitar.Design.Ribs.ThicknessMm;
        Assert.Equal(
            plan.Guitar.Outline.HalfPerimeterMm - (Math.PI * t / 2),
            plan.Ribs.LengthMm,
            1e-4
        );
        double chords = 0;
        for (int i = 1; i < plan.Ribs.Points.Count; i++)
        {
            RibPoint a = plan.Ribs.Points[i - 1];
            RibPoint b = plan.Ribs.Points[i];
            chords += new Point(a.UMm, a.YMm).DistanceTo(new Point(b.UMm, b.YMm));
        }

        Assert.InRange(plan.Ribs.LengthMm - chords, 0, 0.02);
    }

    // The area of the flat piece is that of the surface in space: 20 000 triangles between the soundboard's and the back's edge, over
    // the exact offset of the outline, which the pattern's code does not use.
    [Theory]
    [InlineData("heron", "")]
    [InlineData("dunlin", "[dome]\nkind = \"rim-on-sphere\"\nheight = 3")]
    [InlineData("plover", "[back]\nkind = \"sphere\"\nlong_radius = 4000")]
    public void FlatAreaIsThatOfTheSurface(string name, string more)
    {
        InstrumentDesign design = more.StartsWith("[dome]", StringComparison.Ordinal)
            ? WithDome(name)
            : Demo.Design(name, Plain + "\n" + more);
        BodyPlan plan = BodyPlan.Of(Instrument.Guitar.Build(design).Guitar!);
        double t = design.Ribs.ThicknessMm;
        OffsetPath middle = Offset.Of(plan.Guitar.Outline.Half, -t / 2).Paths.Single();
        Polyline line = middle.ToPolyline(1e-5);
        double area = 0;
        for (int i = 1; i < line.Points.Count; i++)
        {
            area += Strip(line.Points[i - 1], line.Points[i]);
        }

        Assert.True(line.Points.Count > 1000);
        Assert.Equal(1, plan.Ribs.AreaMm2 / area, 2e-5);

        double Strip(Point a, Point b)
        {
            double da = plan.Back.Depth.HeightAt(a) + plan.Guitar.Dome.Field.HeightAt(a);
            double db = plan.Back.Depth.HeightAt(b) + plan.Guitar.Dome.Field.HeightAt(b);
            return a.DistanceTo(b) * (da + db) / 2;
        }
    }

    private static InstrumentDesign WithDome(string name)
    {
        InstrumentDesign design = Demo.Design(name, Plain);
        return design with
        {
            Dome = design.Dome with { Kind = DomeKind.RimOnSphere, StartMm = 80, HeightMm = 3 },
        };
    }

    [Fact]
    public void StationsComeInOrderAndLieOnTheOutline()
    {
        BodyPlan plan = Demo.Plan();
        Assert.Equal(
            [
                RibMark.Tail,
                RibMark.LowerBout,
                RibMark.Straight,
                RibMark.Waist,
                RibMark.Straight,
                RibMark.UpperBout,
                RibMark.Heel,
            ],
            plan.Ribs.Stations.Select(station => station.Mark)
        );
        RibPoint bout = plan.Ribs.Stations[1].At;
        Assert.Equal(356, bout.UMm, 1e-6);
        Assert.Equal((368 / 2) - 1, bout.YMm, 1e-6);
        Assert.Equal([false, true, false], plan.Ribs.Bends.Select(bend => bend.IsWaist));
        // At the waist the outline is the hollow outer face: at mid-thickness the radius is larger by t/2.
        Assert.Equal(plan.Guitar.Figures.TightestWaistMm + 1, plan.Ribs.Bends[1].TightestMm, 1e-6);
    }

    // A rib slot takes the rib further in: its end lies at the slot's bottom, half the block less the slot's depth from the centreline.
    [Fact]
    public void TheSlotsDepthSetsTheRibsLength()
    {
        BodyPlan shallow = Demo.Plan(more: "[heel]\nslot_depth = 15");
        BodyPlan deep = Demo.Plan(more: "[heel]\nslot_depth = 22");
        Assert.Equal((64.0 / 2) - 15, shallow.Ribs.Points[^1].YMm, 1e-9);
        Assert.Equal((64.0 / 2) - 22, deep.Ribs.Points[^1].YMm, 1e-9);
        Assert.InRange(deep.Ribs.LengthMm - shallow.Ribs.LengthMm, 7, 7.2);
    }

    [Fact]
    public void ATailStripShortensTheRib()
    {
        BodyPlan plain = Demo.Plan();
        BodyPlan strip = Demo.Plan(more: "[ribs]\ntail_strip = 12");
        Assert.InRange(plain.Ribs.LengthMm - strip.Ribs.LengthMm, 5.99, 6.05);
        Assert.Equal(6, strip.Ribs.Points[0].YMm, 1e-9);
    }

    // n blocks and n - 1 gaps are no longer than the way between heel and tail block, one more would be; a face of 14 on a circle of R stands off
    // by R - √(R² - 7²).
    [Fact]
    public void GlueBlocksFillTheWayAndFollowTheBend()
    {
        LiningPlan blocks = Demo.Plan(
            more: "[ribs]\nlining = \"glue-blocks\"\nglue_block = 14\nglue_block_gap = 2"
        ).Ribs.Lining;
        Assert.InRange(blocks.FrontMm - ((blocks.GlueBlocks * 16) - 2), 0, 16 - 1e-9);
        double r = blocks.TightestMm;
        Assert.Equal(r - Math.Sqrt((r * r) - 49), blocks.GlueBlockRoundMm, 1e-9);
        Assert.Equal(0, Demo.Plan().Ribs.Lining.GlueBlocks);
    }

    // Kerfs that just close turn the lining by what the bend turns: n · 2 atan(k/2d) = L/R.
    [Theory]
    [InlineData(80, 6, 0.8, 1.2)]
    [InlineData(55, 7, 0.6, 1.0)]
    public void KerfsCloseAtTheTightestBend(double radius, double width, double kerf, double web)
    {
        double step = Linings.KerfStep(radius, width, kerf, web);
        double turn = 2 * Math.Atan(kerf / 2 / (width - web));
        Assert.Equal(step / (radius - (web / 2)), turn, 1e-12);
    }

    // A round block face of a circle: chord depth r - √(r² - y²) on the inner face.
    [Fact]
    public void BlockFaceIsTheInnerFaceOfTheRib()
    {
        RibPlan ribs = Ribs(Demo.Circle(180), Back(BackKind.Arches, 90, 0, 0));
        double inner = 180 - 2;
        foreach (BlockFace block in new[] { ribs.TailBlock, ribs.HeelBlock! })
        {
            Assert.All(
                block.Face,
                at => Assert.Equal(inner - Math.Sqrt((inner * inner) - (at.Y * at.Y)), at.X, 1e-9)
            );
            Assert.Equal(0, block.Face.Sum(at => at.Y), 1e-9);
        }

        Assert.Equal(70, ribs.TailBlock.WidthMm, 1e-9);
    }

    // The bevel of the back's edge: under a cylinder, tan β = y/√(R² - y²) · sin φ at the place where the normal points φ off the centreline.
    [Fact]
    public void BevelFollowsTheSlopeOfTheBack()
    {
        RibPlan ribs = Ribs(Demo.Circle(150), Back(BackKind.Arches, 90, 0, 1000));
        RibPoint side = ribs.Points.MaxBy(at => at.YMm);
        double expected = Math.Atan(side.YMm / Math.Sqrt(1e6 - (side.YMm * side.YMm)));
        Assert.Equal(expected * 180 / Math.PI, side.BackBevelDeg, 1e-4);
    }
}

using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

public sealed class OffsetTests
{
    private static readonly Chain Heron = Models.Of(Models.Heron).Closed;

    private static readonly Gen<double> Distances =
        from size in Gen.Double[0.5, 90]
        from isLeft in Gen.Bool
        select isLeft ? size : -size;

    private static readonly Chain Square = new(
        new[] { new Point(0, 0), new(100, 0), new(100, 60), new(0, 60) }
            .Zip([new Point(100, 0), new(100, 60), new(0, 60), new(0, 0)])
            .Select(pair => EulerSegment.Line(pair.First, pair.Second)),
        true
    );

    /// <summary>A regular offset at d to the left has curvature κ/(1 - κd), the same tangents, and length L - d × turning.</summary>
    [Fact]
    public void The_curvature_law_holds() =>
        (
            from chain in Models.Chains
            from share in Gen.Double[-0.9, 0.9]
            select (chain, share)
        ).Holds(
            given =>
            {
                double tightest = Math.Min(
                    given.chain.TightestLeft?.Curve.RadiusMm ?? 1e3,
                    given.chain.TightestRight?.Curve.RadiusMm ?? 1e3
                );
                double d = given.share * Math.Min(tightest, 200);
                if (Math.Abs(d) < 0.1)
                {
                    return;
                }

                foreach (OffsetPath path in Offset.Of(given.chain, d).Paths)
                {
                    for (int i = 0; i < path.SpanCount; i++)
                    {
                        CurvePoint at = path.At(i, 0.4 * path.SpanEnd(i));
                        NearestPoint foot = given.chain.Nearest(at.Position);
                        Assert.Equal(Math.Abs(d), foot.DistanceMm, 1e-7);
                        double kappa = foot.Foot.Curve.Curvature;
                        Assert.Equal(kappa / (1 - (kappa * d)), at.Curvature, 1e-5);
                        Assert.Equal(
                            0,
                            Math.IEEERemainder(foot.Foot.Curve.Angle - at.Angle, 2 * Math.PI),
                            1e-6
                        );
                        Assert.Equal(d > 0, foot.IsLeft);
                    }
                }
            },
            iter: 100
        );

    [Theory]
    [InlineData(50)]
    [InlineData(12)]
    [InlineData(-50)]
    [InlineData(-8)]
    public void A_regular_offset_is_one_loop_of_known_length(double d)
    {
        OffsetResult result = Offset.Of(Heron, d);
        Assert.Empty(result.Problems);
        OffsetPath path = Assert.Single(result.Paths);
        Assert.True(path.IsClosed);
        // Steiner: a full turn shortens by 2πd.
        Assert.Equal(Heron.LengthMm - (2 * Math.PI * d), path.LengthMm, 1e-8);
        Audited(Heron, d, result);
    }

    [Theory]
    [InlineData(-74.8, 1)]
    [InlineData(-80, 1)]
    [InlineData(-300, 1)]
    [InlineData(80, 1)]
    [InlineData(110, 1)]
    [InlineData(119, 2)]
    [InlineData(125, 2)]
    [InlineData(150, 1)]
    [InlineData(190, 0)]
    public void Beyond_the_radius_it_is_trimmed_or_falls_apart(double d, int loops)
    {
        OffsetResult result = Offset.Of(Heron, d);
        Assert.Empty(result.Problems);
        Assert.Equal(loops, result.Paths.Count);
        Assert.All(result.Paths, path => Assert.True(path.IsClosed));
        Audited(Heron, d, result);
    }

    [Fact]
    public void A_rectangle_has_known_offsets()
    {
        Assert.Equal(
            (2 * 80) + (2 * 40),
            Assert.Single(Offset.Of(Square, 10).Paths).LengthMm,
            1e-9
        );
        Assert.Equal(
            320 + (20 * Math.PI),
            Assert.Single(Offset.Of(Square, -10).Paths).LengthMm,
            1e-9
        );
        Assert.Empty(Offset.Of(Square, 40).Paths);
        ArcPath arcs = Offset.Of(Square, -10).Paths[0].ToArcs(0.01);
        Assert.Equal(8, arcs.Vertices.Count);
        Assert.Equal(6000 + 3200 + (100 * Math.PI), arcs.SignedAreaMm2, 1e-6);
        Audited(Square, -10, Offset.Of(Square, -10));
        Audited(Square, 29, Offset.Of(Square, 29));
    }

    [Fact]
    public void Lines_and_arcs_are_shifted()
    {
        Chain line = new([EulerSegment.Line(new(0, 0), new(30, 40))]);
        OffsetPath left = Assert.Single(Offset.Of(line, 5).Paths);
        Assert.True(left.Start.Position.DistanceTo(new(-4, 3)) < 1e-12);
        Assert.Equal(50, left.LengthMm, 1e-12);
        Chain arc = new([new EulerSegment(new(0, 0), 0, 0.1, 0, 15)]);
        Assert.Equal(7.5, Assert.Single(Offset.Of(arc, 5).Paths).LengthMm, 1e-12);
        Assert.Equal(22.5, Assert.Single(Offset.Of(arc, -5).Paths).LengthMm, 1e-12);
        Assert.Empty(Offset.Of(arc, 10.5).Paths);
    }

    [Fact]
    public void Random_outlines_pass_the_validator() =>
        (from features in Models.Varied from d in Distances select (features, d)).Holds(
            given =>
            {
                Chain closed = Models.Of(given.features).Closed;
                OffsetResult result = Offset.Of(closed, given.d);
                Assert.Empty(result.Problems);
                Assert.NotEmpty(result.Paths);
                Audited(closed, given.d, result, 8);
            },
            iter: 300
        );

    [Fact]
    public void Random_open_chains_pass_the_validator() =>
        (
            from smooth in Models.Chains
            from cornered in Models.Cornered
            from isSmooth in Gen.Bool
            from d in Distances
            select (chain: isSmooth ? smooth : cornered, d)
        ).Holds(
            given =>
            {
                OffsetResult result = Offset.Of(given.chain, given.d);
                Assert.True(
                    result.Problems.Count == 0,
                    $"{given.d:R}: {string.Join(", ", result.Problems)} {Models.Show(given.chain)}"
                );
                Audited(given.chain, given.d, result);
            },
            iter: 200
        );

    /// <summary>
    /// Offsets a hair less or more than the radius of a bout or the waist: the tail of the swallow is cut off however small it is.
    /// </summary>
    [Fact]
    public void Offsets_at_the_radius_pass_the_validator() =>
        (
            from features in Models.Sensible
            from turn in Gen.Int[0, 2]
            from exponent in Gen.Double[-9, -0.5]
            from isMore in Gen.Bool
            select (features, turn, share: Math.Pow(10, exponent) * (isMore ? 1 : -1))
        ).Holds(
            given =>
            {
                Outline outline = Models.Of(given.features);
                double d = (1 + given.share) / outline.Turns[given.turn].CurvaturePerMm;
                OffsetResult result = Offset.Of(outline.Closed, d);
                Assert.Empty(result.Problems);
                Audited(outline.Closed, d, result, 8);
            },
            iter: 150
        );

    [Fact]
    public void A_tail_of_a_few_nanometres_is_cut_off()
    {
        OutlineFeatures features = new(
            370,
            new(84.7833853779698, 203.43236172360182),
            new(153.90196915379707, 181.629077680011),
            new(259.7444453442414, 277.5)
        )
        {
            HeelFlatMm = 1.4209750466393587E-38,
        };
        Chain closed = Models.Of(features).Closed;
        OffsetResult result = Offset.Of(closed, 3261 / 56.0);
        Assert.Empty(result.Problems);
        Assert.True(Assert.Single(result.Paths).IsClosed);
        Audited(closed, 3261 / 56.0, result);
    }

    [Fact]
    public void Arcs_of_offsets_keep_the_distance_within_their_error() =>
        (from features in Models.Sensible from d in Distances select (features, d)).Holds(
            given =>
            {
                Chain closed = Models.Of(given.features).Closed;
                ArcPath[] arcs =
                [
                    .. Offset.Of(closed, given.d).Paths.Select(path => path.ToArcs(0.01)),
                ];
                double error = arcs.Max(path => path.ErrorMm);
                Assert.True(error <= 0.01);
                Assert.True(arcs.Max(path => path.KinkRad) < 1e-7);
                OffsetAudit audit = OffsetValidator.Check(closed, given.d, arcs, 5);
                Assert.True(audit.TooNearMm <= (1.03 * error) + 1e-9);
                Assert.True(audit.TooFarMm <= (1.03 * error) + 1e-9);
            },
            iter: 25
        );

    [Fact]
    public void Symmetry_matrix() =>
        (
            from chain in Models.Chains
            from d in Distances
            from factor in Gen.Double[0.3, 3]
            select (chain, d, factor)
        ).Holds(
            given =>
            {
                (Chain chain, double d, double factor) = given;
                double[] lengths = Lengths(Offset.Of(chain, d));
                Same(lengths, Lengths(Offset.Of(chain.Mirrored(), -d)));
                Same(lengths, Lengths(Offset.Of(chain.Reversed(), -d)));
                Same(lengths, Lengths(Offset.Of(chain.Moved(new(1234, -567)), d)));
                Same(lengths, Lengths(Offset.Of(chain.Rotated(1), d)));
                Same(
                    [.. lengths.Select(length => length * factor)],
                    Lengths(Offset.Of(chain.Scaled(factor), d * factor))
                );
            },
            iter: 60
        );

    /// <summary>The same loop from every one of some starts gives the same offset.</summary>
    [Theory]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(122)]
    [InlineData(-90)]
    public void The_start_of_a_loop_does_not_matter(double d)
    {
        double[] wanted = Lengths(Offset.Of(Heron, d));
        for (int i = 1; i < 12; i++)
        {
            Chain shifted = new(
                Heron.Part(Heron.LengthMm * i / 12, Heron.LengthMm * i / 12).Segments,
                true
            );
            Same(wanted, Lengths(Offset.Of(shifted, d)));
        }
    }

    [Fact]
    public void The_validator_sees_what_is_wrong()
    {
        OffsetPath half = Offset.Of(Models.Of(Models.Heron).Half, -20).Paths[0];
        OffsetAudit missing = OffsetValidator.Check(Heron, 20, [half], 2);
        Assert.True(missing.MissedMm > 50);
        OffsetPath raw = Offset.Of(Heron, 20).Paths[0];
        Assert.Equal(1, OffsetValidator.Check(Heron, 21, [raw], 2).TooNearMm, 1e-9);
        Assert.Equal(1, OffsetValidator.Check(Heron, 19, [raw], 2).TooFarMm, 1e-9);
    }

    /// <summary>Sides of a slot exactly twice the offset apart: no offset is defined; it ends within bounded work and says so, or is empty.</summary>
    [Fact]
    public void Coinciding_sides_end()
    {
        OffsetResult result = Offset.Of(Square, 30);
        Assert.True(result.Paths.Count == 0 || result.Problems.Count > 0);
    }

    [Fact]
    public void Refuses_no_distance()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Offset.Of(Square, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offset.Of(Square, double.NaN));
    }

    private static void Audited(Chain source, double d, OffsetResult result, double spacing = 3)
    {
        OffsetAudit audit = OffsetValidator.Check(source, d, result.Paths, spacing);
        Assert.True(audit.TooNearMm < 2e-6, $"{d}: too near {audit} {Models.Show(source)}");
        Assert.True(audit.TooFarMm < 1e-7, $"{d}: too far {audit}");
        // The sagitta of a sample in the tightest offsets, whose radius may be near 0.
        Assert.True(audit.MissedMm < 0.1 * spacing, $"{d}: missed {audit} {Models.Show(source)}");
    }

    private static double[] Lengths(OffsetResult result) =>
        [.. result.Paths.Select(path => path.LengthMm).Order()];

    private static void Same(double[] wanted, double[] got)
    {
        Assert.Equal(wanted.Length, got.Length);
        Assert.All(wanted.Zip(got), pair => Assert.Equal(pair.First, pair.Second, 1e-5));
    }
}

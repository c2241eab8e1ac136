using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Curves.Tests;

public sealed class MinimumVariationTests
{
    public static TheoryData<
        string,
        double,
        double,
        double,
        double,
        double,
        double,
        double
    > Known =>
        new()
        {
            // Half perimeter, mm: a separate finite-element calculation (curvature piecewise linear, 64 and 128 equal elements a span),
            // Richardson-extrapolated (computed). Area in cm² and radii in mm at heel, upper bout, waist, lower bout, tail: the finer of the two.
            { "Heron", 716.92206, 1347.27, 194.06, 71.35, 74.72, 107.15, 319.3 },
            { "Dunlin", 672.56736, 1184.82, 173.64, 68.94, 72.23, 102.53, 284.4 },
            { "Plover", 602.92982, 956.56, 162.79, 60.33, 63.60, 92.35, 261.1 },
        };

    [Theory]
    [MemberData(nameof(Known))]
    public void The_models_come_out_as_an_independent_calculation_has_them(
        string name,
        double halfPerimeter,
        double area,
        double heel,
        double upper,
        double waist,
        double lower,
        double tail
    )
    {
        OutlineSolution solution = MinimumVariation.Solve(Model(name));
        Assert.Empty(solution.Problems);
        Assert.Empty(solution.Remarks);
        Outline outline = solution.Outline!;
        Assert.Equal(halfPerimeter, outline.HalfPerimeterMm, 1e-4);
        Assert.Equal(area, outline.AreaMm2 / 100, 0.01);
        Assert.Equal(heel, outline.Half.Start.RadiusMm, 0.05);
        IReadOnlyList<OutlineRow> turns = outline.Turns;
        Assert.Equal(3, turns.Count);
        Assert.Equal(upper, 1 / turns[0].CurvaturePerMm, 0.05);
        Assert.Equal(waist, -1 / turns[1].CurvaturePerMm, 0.05);
        Assert.Equal(lower, 1 / turns[2].CurvaturePerMm, 0.05);
        Assert.Equal(tail, outline.Half.End.RadiusMm, 0.3);
        Assert.True(solution.RefinementMm < 0.01);
        Assert.True(solution.DeviationMm <= 0.001);
        Assert.Equal(4, outline.Half.CurvaturePieces().Count);
    }

    [Theory]
    [InlineData("Heron")]
    [InlineData("Dunlin")]
    [InlineData("Plover")]
    public void Refinement_converges(string name)
    {
        OutlineFeatures features = Model(name);
        double finest = Models.Of(features, 1e-7).HalfPerimeterMm;
        foreach (double tolerance in new[] { 1, 0.01, 1e-4 })
        {
            OutlineSolution solution = MinimumVariation.Solve(features, tolerance);
            Assert.True(solution.RefinementMm < tolerance);
            Assert.Equal(finest, solution.Outline!.HalfPerimeterMm, tolerance);
        }
    }

    /// <summary>
    /// The conditions of Euler and Lagrange for least ∫κ'² under fixed ends and free length: in each span a constant vector λ with
    /// 2κκ'' - κ'² = -λ·T; at features κ' is continuous; on the centreline κ' = 0. Derivatives by differences of the fine chain.
    /// </summary>
    [Theory]
    [InlineData("Heron")]
    [InlineData("Plover")]
    public void The_curve_is_stationary(string name)
    {
        Chain half = Models.Of(Model(name), 1e-6).Half;
        double[] joins =
        [
            0,
            .. half.TangentsAlong(0).Select(place => place.ArcLengthMm),
            half.LengthMm,
        ];
        double largest = half.Segments.Max(segment => Math.Abs(segment.CurvatureRate));
        Assert.True(Math.Abs(half.Segments[0].CurvatureRate) < 0.02 * largest);
        Assert.True(Math.Abs(half.Segments[^1].CurvatureRate) < 0.02 * largest);
        for (int span = 0; span < 4; span++)
        {
            double length = joins[span + 1] - joins[span];
            double h = length / 64;
            List<(double Left, Vector Tangent)> rows = [];
            for (int i = 2; i <= 62; i++)
            {
                CurvePoint at = half.At(joins[span] + (i * h));
                double before = half.At(joins[span] + ((i - 1) * h)).Curvature;
                double after = half.At(joins[span] + ((i + 1) * h)).Curvature;
                double slope = (after - before) / (2 * h);
                double bend = (after - (2 * at.Curvature) + before) / (h * h);
                rows.Add(((2 * at.Curvature * bend) - (slope * slope), at.Tangent));
            }

            double xx = rows.Sum(r => r.Tangent.X * r.Tangent.X);
            double xy = rows.Sum(r => r.Tangent.X * r.Tangent.Y);
            double yy = rows.Sum(r => r.Tangent.Y * r.Tangent.Y);
            double bx = -rows.Sum(r => r.Tangent.X * r.Left);
            double by = -rows.Sum(r => r.Tangent.Y * r.Left);
            double determinant = (xx * yy) - (xy * xy);
            Vector lambda = new(
                ((yy * bx) - (xy * by)) / determinant,
                ((xx * by) - (xy * bx)) / determinant
            );
            double worst = rows.Max(r => Math.Abs(r.Left + lambda.Dot(r.Tangent)));
            Assert.True(worst < 0.01 * lambda.Length, $"span {span}: {worst / lambda.Length}");
        }

        for (int i = 1; i < 4; i++)
        {
            double h = 0.5;
            double at = half.At(joins[i]).Curvature;
            double left = (at - half.At(joins[i] - h).Curvature) / h;
            double right = (half.At(joins[i] + h).Curvature - at) / h;
            Assert.Equal(left, right, 0.02 * largest);
        }
    }

    /// <summary>
    /// Random smooth changes of the curvature plot, brought back onto all features by the test's own Newton steps, never lower the energy.
    /// The rise is of second order, so each change is drawn out to one size: a random one of 1e-8 would drown in rounding.
    /// </summary>
    [Fact]
    public void No_admissible_change_lowers_the_energy()
    {
        OutlineSolution solution = MinimumVariation.Solve(Models.Heron, 1e-5);
        Chain half = solution.Outline!.Half;
        double energy = Perturbed.Energy(half);
        Assert.Equal(solution.Energy, energy, 1e-3 * solution.Energy);
        int compared = 0;
        Gen.Double[-1, 1]
            .Array[12]
            .Where(amplitudes => amplitudes.Any(a => a != 0))
            .Holds(
                amplitudes =>
                {
                    double largest = amplitudes.Max(Math.Abs);
                    Chain? other = Perturbed.Of(
                        half,
                        [.. amplitudes.Select(a => 1e-3 * (a / largest))]
                    );
                    if (other is not null)
                    {
                        compared++;
                        Assert.True(Perturbed.Energy(other) > energy);
                    }
                },
                iter: 60
            );
        Assert.True(compared > 50, $"only {compared} changes could be compared");
    }

    [Fact]
    public void Sensible_features_are_met_exactly() =>
        Models.Varied.Holds(
            features =>
            {
                OutlineSolution solution = MinimumVariation.Solve(features);
                Assert.True(
                    solution.Outline is not null,
                    string.Join(", ", solution.Problems) + features
                );
                Outline outline = solution.Outline!;
                Chain half = outline.Half;
                Assert.True(solution.RefinementMm < 0.01);
                Assert.Equal(features.BodyLengthMm, outline.BodyLengthMm, 1e-8);
                IReadOnlyList<OutlineRow> turns = outline.Turns;
                Assert.Equal(3, turns.Count);
                Met(features.UpperBout, turns[0], 1);
                Met(features.Waist, turns[1], -1);
                Met(features.LowerBout, turns[2], 1);
                Assert.Equal(0.5 * Math.PI, half.Start.Angle, 1e-12);
                Assert.Equal(-0.5 * Math.PI, half.End.Angle, 1e-10);
                Assert.All(half.Joins, join => Assert.Equal(0, join.KinkRad, 1e-10));
                Assert.All(half.Joins, join => Assert.Equal(0, join.CurvatureStep, 1e-12));
                if (features.HeelFlatMm > 0)
                {
                    Assert.Equal(0.5 * features.HeelFlatMm, half.Segments[0].LengthMm, 1e-10);
                    Assert.Equal(0, half.Segments[0].EndCurvature);
                }
            },
            iter: 600
        );

    [Fact]
    public void Scaled_features_give_the_scaled_outline() =>
        (
            from features in Models.Sensible
            from factor in Gen.Double[0.2, 5]
            select (features, factor)
        ).Holds(
            given =>
            {
                (OutlineFeatures f, double k) = given;
                Chain one = Models.Of(f).Half;
                Chain other = Models
                    .Of(
                        new OutlineFeatures(
                            k * f.BodyLengthMm,
                            Scaled(f.UpperBout, k),
                            Scaled(f.Waist, k),
                            Scaled(f.LowerBout, k)
                        ),
                        0.01 * k
                    )
                    .Half;
                Assert.Equal(k * one.LengthMm, other.LengthMm, 1e-7 * other.LengthMm);
                for (int i = 0; i <= 10; i++)
                {
                    Point wanted = one.At(one.LengthMm * i / 10).Position;
                    Point got = other.At(other.LengthMm * i / 10).Position;
                    Assert.True(got.DistanceTo(new(k * wanted.X, k * wanted.Y)) < 1e-6 * k * 500);
                }
            },
            iter: 40
        );

    /// <summary>Heel and tail exchanged: the same curve from the other end.</summary>
    [Fact]
    public void Features_turned_end_for_end_give_the_outline_turned() =>
        Models.Sensible.Holds(
            f =>
            {
                double body = f.BodyLengthMm;
                Chain one = Models.Of(f).Half;
                OutlineFeatures turned = new(
                    body,
                    f.LowerBout with
                    {
                        UMm = body - f.LowerBout.UMm,
                    },
                    f.Waist with
                    {
                        UMm = body - f.Waist.UMm,
                    },
                    f.UpperBout with
                    {
                        UMm = body - f.UpperBout.UMm,
                    }
                );
                Chain other = Models.Of(turned).Half;
                Assert.Equal(one.LengthMm, other.LengthMm, 1e-6);
                for (int i = 0; i <= 10; i++)
                {
                    Point a = one.At(one.LengthMm * i / 10).Position;
                    Point b = other.At(other.LengthMm * (10 - i) / 10).Position;
                    Assert.True(a.DistanceTo(new(body - b.X, b.Y)) < 1e-3);
                }
            },
            iter: 40
        );

    [Fact]
    public void The_same_features_give_the_same_bits()
    {
        Chain one = Models.Of(Models.Dunlin).Half;
        Chain other = Models.Of(Models.Dunlin).Half;
        Assert.Equal(one.Segments.AsSpan(), other.Segments.AsSpan());
    }

    [Fact]
    public void Fixed_radii_are_met()
    {
        OutlineFeatures features = Models.Heron with
        {
            UpperBout = Models.Heron.UpperBout with { RadiusMm = 85 },
            Waist = Models.Heron.Waist with { RadiusMm = 65 },
            LowerBout = Models.Heron.LowerBout with { RadiusMm = 125 },
            HeelRadiusMm = 170,
            TailRadiusMm = 400,
        };
        Outline outline = Models.Of(features);
        Assert.Equal(85, 1 / outline.Turns[0].CurvaturePerMm, 1e-8);
        Assert.Equal(-65, 1 / outline.Turns[1].CurvaturePerMm, 1e-8);
        Assert.Equal(125, 1 / outline.Turns[2].CurvaturePerMm, 1e-8);
        Assert.Equal(170, outline.Half.Start.RadiusMm, 1e-8);
        Assert.Equal(400, outline.Half.End.RadiusMm, 1e-7);
    }

    internal static OutlineFeatures Model(string name) =>
        name switch
        {
            "Heron" => Models.Heron,
            "Dunlin" => Models.Dunlin,
            _ => Models.Plover,
        };

    private static OutlineStation Scaled(OutlineStation station, double factor) =>
        new(station.UMm * factor, station.WidthMm * factor);

    private static void Met(OutlineStation wanted, OutlineRow got, int convex)
    {
        Assert.Equal(wanted.UMm, got.UMm, 1e-7);
        Assert.Equal(wanted.WidthMm, got.WidthMm, 1e-8);
        Assert.True(convex * got.CurvaturePerMm > 0);
        if (wanted.RadiusMm is { } radius)
        {
            Assert.Equal(radius, convex / got.CurvaturePerMm, 1e-7 * radius);
        }
    }
}

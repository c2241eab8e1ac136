using CsCheck;
using Formwright.Instrument.Tolerances;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Tolerances;

public sealed class PropagationTests
{
    // JCGM 100:2008 (GUM), H.1: end gauge. l = ls + d - ls (da * theta + as * dtheta), lengths in nm.
    // Standard uncertainties as its table H.1 prints them; u(theta)^2 = 0.2^2 (mean) + 0.35^2 (cycle, U-shaped of half width 0.5).
    private static readonly FunctionModel EndGauge = new(
        [
            UncertainInput.Normal("ls", 50_000_623, 25),
            UncertainInput.Normal("d", 215, 9.7),
            UncertainInput.Normal("as", 11.5e-6, 1.2e-6),
            UncertainInput.Normal("theta mean", -0.1, 0.2),
            new("theta cycle", 0, InputShape.Arcsine, 0.5),
            UncertainInput.Normal("da", 0, 0.58e-6),
            UncertainInput.Normal("dtheta", 0, 0.029),
        ],
        x => x[0] + x[1] - (x[0] * ((x[5] * (x[3] + x[4])) + (x[2] * x[6])))
    );

    [Fact]
    public void Gum_h1_end_gauge()
    {
        Budget budget = Propagation.Of(EndGauge, 0, secondOrder: true);
        Assert.Equal(50_000_838, budget.Value, 0.5);
        Assert.Equal(32, budget.CombinedUncertainty, 0.5);
        Assert.Equal(34, budget.SecondOrderUncertainty!.Value, 0.5);
        Assert.Equal(25, Part("ls"), 0.5);
        Assert.Equal(9.7, Part("d"), 0.05);
        Assert.Equal(0, Part("as"), 0.05);
        Assert.Equal(2.9, Part("da"), 0.05);
        Assert.Equal(16.7, Part("dtheta"), 0.05);
        Assert.Equal("ls", budget.Ranked[0].Input.Name);
        Assert.Equal("dtheta", budget.Ranked[1].Input.Name);
        double Part(string name) =>
            budget.Contributions.Single(each => each.Input.Name == name).Uncertainty;
    }

    // The same model by Monte Carlo: the second-order figure, as the first order misses the products.
    [Fact]
    public void Gum_h1_by_monte_carlo()
    {
        Spread spread = MonteCarlo.Run(EndGauge, 400_000, 7).Outputs[0];
        Assert.Equal(50_000_838, spread.Mean, 0.5);
        Assert.Equal(34, spread.StandardDeviation, 0.5);
    }

    // JCGM 101:2008, 9.2.2: four N(0,1); u 2.00, 95 % interval ±3.92.
    [Fact]
    public void Jcgm_101_9_2_normal()
    {
        Spread spread = MonteCarlo
            .Run(Sum(i => UncertainInput.Normal($"x{i}", 0, 1)), 4_000_000, 1)
            .Outputs[0];
        Assert.Equal(2.00, spread.StandardDeviation, 0.005);
        Assert.Equal(-3.92, spread.Interval95.Low, 0.01);
        Assert.Equal(3.92, spread.Interval95.High, 0.01);
        Assert.Equal(0, spread.Mean, 0.005);
    }

    // JCGM 101:2008, 9.2.3: four rectangular of unit deviation; ±3.88, analytic 3.879406742. The law of propagation still says u 2.00.
    [Fact]
    public void Jcgm_101_9_2_rectangular()
    {
        FunctionModel model = Sum(i => UncertainInput.PlusMinus($"x{i}", 0, Math.Sqrt(3)));
        Spread spread = MonteCarlo.Run(model, 4_000_000, 1).Outputs[0];
        Assert.Equal(2.00, spread.StandardDeviation, 0.005);
        Assert.Equal(-3.879406742, spread.Interval95.Low, 0.01);
        Assert.Equal(3.879406742, spread.Interval95.High, 0.01);
        Assert.Equal(2, Propagation.Of(model).CombinedUncertainty, 1e-9);
    }

    [Fact]
    public void The_worst_case_is_never_less_than_the_root_sum_of_squares() =>
        Gen.Select(Gen.Double[-3, 3].Array[4], Gen.Double[0, 2].Array[4], Gen.Int[0, 3].Array[4])
            .Holds(
                (c, spread, shape) =>
                {
                    FunctionModel model = new(
                        [
                            .. spread.Select(
                                (a, i) => new UncertainInput($"x{i}", 1, (InputShape)shape[i], a)
                            ),
                        ],
                        x => (c[0] * x[0]) + (c[1] * x[1] * x[1]) + (c[2] * x[2]) + (c[3] * x[3])
                    );
                    Budget budget = Propagation.Of(model);
                    double shares = budget.Contributions.Sum(each => each.Share);
                    return budget.WorstCase >= budget.CombinedUncertainty - 1e-12
                        && (budget.CombinedUncertainty == 0 || Math.Abs(shares - 1) < 1e-9);
                }
            );

    [Fact]
    public void A_linear_model_gets_its_own_coefficients_and_no_second_order()
    {
        FunctionModel model = new(
            [
                UncertainInput.PlusMinus("a", 3, 0.3),
                UncertainInput.Normal("b", -2, 0.1),
                UncertainInput.PlusMinus("c", 5, 0),
            ],
            x => (2 * x[0]) - (4 * x[1]) + (7 * x[2])
        );
        Budget budget = Propagation.Of(model, 0, secondOrder: true);
        Assert.Equal(2, budget.Contributions[0].Sensitivity, 1e-9);
        Assert.Equal(-4, budget.Contributions[1].Sensitivity, 1e-9);
        Assert.Equal(7, budget.Contributions[2].Sensitivity, 1e-9);
        Assert.Equal(
            Math.Sqrt(Math.Pow(0.6 / Math.Sqrt(3), 2) + 0.16),
            budget.CombinedUncertainty,
            1e-9
        );
        Assert.Equal(budget.CombinedUncertainty, budget.SecondOrderUncertainty!.Value, 1e-9);
        Assert.Equal(2, budget.Ranked.Count);
    }

    [Fact]
    public void A_callers_mistake_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            UncertainInput.PlusMinus("a", double.NaN, 1)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => UncertainInput.PlusMinus("a", 0, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Propagation.Of(EndGauge, 1));
        FunctionModel bad = new([UncertainInput.PlusMinus("a", 0, 1)], x => Math.Sqrt(x[0]));
        Assert.Throws<ArgumentException>(() => MonteCarlo.Run(bad, 10_000, 1));
    }

    private static FunctionModel Sum(Func<int, UncertainInput> input) =>
        new([.. Enumerable.Range(0, 4).Select(input)], x => x[0] + x[1] + x[2] + x[3]);
}

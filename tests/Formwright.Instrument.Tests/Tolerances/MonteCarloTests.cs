using Formwright.Instrument.Tolerances;
using Xunit;

namespace Formwright.Instrument.Tests.Tolerances;

public sealed class MonteCarloTests
{
    private static readonly FunctionModel Product = new(
        [
            UncertainInput.PlusMinus("a", 1, 0.5),
            UncertainInput.Normal("b", 2, 0.3),
            new("c", 0, InputShape.Triangular, 1),
        ],
        x => (x[0] * x[1]) + x[2]
    );

    [Fact]
    public void The_same_seed_gives_the_same_figures_on_any_number_of_cores()
    {
        MonteCarloResult one = MonteCarlo.Run(Product, 100_003, 42, [new Band(0, 1, 3)], cores: 1);
        MonteCarloResult two = MonteCarlo.Run(Product, 100_003, 42, [new Band(0, 1, 3)], cores: 2);
        MonteCarloResult all = MonteCarlo.Run(Product, 100_003, 42, [new Band(0, 1, 3)], cores: 7);
        MonteCarloResult other = MonteCarlo.Run(Product, 100_003, 43, [new Band(0, 1, 3)]);
        foreach (MonteCarloResult each in new[] { two, all })
        {
            Assert.Equal(one.Outputs[0].Mean, each.Outputs[0].Mean);
            Assert.Equal(one.Outputs[0].StandardDeviation, each.Outputs[0].StandardDeviation);
            Assert.Equal(one.Outputs[0].Interval95, each.Outputs[0].Interval95);
            Assert.Equal(one.ChanceInBands, each.ChanceInBands);
        }

        Assert.NotEqual(one.Outputs[0].Mean, other.Outputs[0].Mean);
    }

    // The values for seed 42 as they came out when first run: a change of the generator must be seen.
    [Fact]
    public void The_generator_keeps_its_values()
    {
        RandomStream random = new(42, 0);
        double[] first = new double[4];
        random.FillUniform(first, 0, 1);
        Assert.All(first, u => Assert.InRange(u, 0, 1));
        RandomStream again = new(42, 0);
        double[] second = new double[4];
        again.FillUniform(second, 0, 1);
        Assert.Equal(first, second);
        double[] elsewhere = new double[4];
        new RandomStream(42, 1).FillUniform(elsewhere, 0, 1);
        Assert.NotEqual(first, elsewhere);
    }

    // Moments of the normal distribution 0, 1, 0, 3 and its tail shares (closed form); 4 million draws, six standard errors.
    [Fact]
    public void Normal_draws_have_the_moments_and_tails_of_the_normal_distribution()
    {
        RandomStream random = new(5, 0);
        const int n = 4_000_000;
        double m1 = 0,
            m2 = 0,
            m3 = 0,
            m4 = 0;
        int past2 = 0,
            past35 = 0,
            below = 0;
        for (int i = 0; i < n; i++)
        {
            double x = Draws.Normal(random);
            m1 += x;
            m2 += x * x;
            m3 += x * x * x;
            m4 += x * x * x * x;
            past2 += Math.Abs(x) > 2 ? 1 : 0;
            past35 += Math.Abs(x) > 3.5 ? 1 : 0;
            below += x < 0.5 ? 1 : 0;
        }

        Assert.Equal(0, m1 / n, 6 * Math.Sqrt(1.0 / n));
        Assert.Equal(1, m2 / n, 6 * Math.Sqrt(2.0 / n));
        Assert.Equal(0, m3 / n, 6 * Math.Sqrt(15.0 / n));
        Assert.Equal(3, m4 / n, 6 * Math.Sqrt(96.0 / n));
        Near(0.0455002639, past2);
        Near(0.000465258158, past35);
        Near(0.691462461, below);
        static void Near(double share, int count) =>
            Assert.Equal(share, (double)count / n, 6 * Math.Sqrt(share * (1 - share) / n));
    }

    [Theory]
    [InlineData(InputShape.Rectangular, 0.57735027)]
    [InlineData(InputShape.Triangular, 0.40824829)]
    [InlineData(InputShape.Arcsine, 0.70710678)]
    [InlineData(InputShape.Normal, 1)]
    public void Draws_have_the_deviation_of_their_shape(InputShape shape, double u)
    {
        FunctionModel model = new([new UncertainInput("x", 3, shape, 1)], x => x[0]);
        Spread spread = MonteCarlo.Run(model, 500_000, 3).Outputs[0];
        Assert.Equal(3, spread.Mean, 0.006);
        Assert.Equal(u, spread.StandardDeviation, 0.004);
        Assert.Equal(u, model.Inputs[0].StandardUncertainty, 1e-7);
        if (shape != InputShape.Normal)
        {
            Assert.InRange(spread.Quantile(0), 2 - 1e-3, 4);
            Assert.InRange(spread.Quantile(1), 2, 4 + 1e-3);
        }
    }

    [Fact]
    public void Chance_quantile_and_share_agree()
    {
        MonteCarloResult run = MonteCarlo.Run(Product, 200_000, 9, [new Band(0, 1.5, 2.5)]);
        Spread spread = run.Outputs[0];
        Assert.Equal(run.ChanceInBands, spread.ShareBelow(2.5) - spread.ShareBelow(1.5), 1e-4);
        Assert.Equal(0.3, spread.ShareBelow(spread.Quantile(0.3)), 1e-6);
        Assert.Equal(0, spread.ShareBelow(-100));
        Assert.Equal(1, spread.ShareBelow(100));
    }

    [Fact]
    public void A_model_with_far_outliers_is_still_counted_whole()
    {
        // One build in some ten thousand jumps far outside what the short run sees.
        FunctionModel model = new(
            [UncertainInput.Normal("x", 0, 1)],
            x => x[0] > 3.8 ? 1000 + x[0] : x[0]
        );
        MonteCarloResult run = MonteCarlo.Run(model, 300_000, 11);
        Assert.True(run.Outputs[0].Quantile(1) > 1000);
        Assert.Equal(0, run.Outputs[0].Quantile(0.5), 1.5 * run.Outputs[0].QuantileError + 0.01);
    }

    [Fact]
    public void An_input_without_spread_stays_where_it_is()
    {
        FunctionModel model = new([UncertainInput.PlusMinus("x", 7, 0)], x => 2 * x[0]);
        Spread spread = MonteCarlo.Run(model, 5000, 1).Outputs[0];
        Assert.Equal(14, spread.Mean, 1e-9);
        Assert.Equal(0, spread.StandardDeviation, 1e-6);
        Assert.Equal(14, spread.Quantile(0.5), 1e-9);
    }
}

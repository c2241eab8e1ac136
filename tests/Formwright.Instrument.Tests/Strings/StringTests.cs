using Formwright.Design.Sections;
using Formwright.Instrument.Strings;
using Xunit;

namespace Formwright.Instrument.Tests.Strings;

public sealed class StringTests
{
    // Distances from the nut on 650 mm, frets 1 to 19: L (1 - 2^(-k/12)) (computed).
    [Fact]
    public void Frets_of_650_stand_where_equal_temperament_puts_them()
    {
        double[] expected =
        [
            36.4816968,
            70.9158332,
            103.41733,
            134.094658,
            163.0502,
            190.380592,
            216.177047,
            240.525659,
            263.507688,
            285.199834,
            305.674494,
            325.0,
            343.240848,
            360.457917,
            376.708665,
            392.047329,
            406.5251,
            420.190296,
            433.088524,
        ];
        IReadOnlyList<double> frets = FretScale.Table(650, 19);
        Assert.Equal(0, frets[0]);
        for (int k = 1; k <= 19; k++)
        {
            Assert.Equal(expected[k - 1], frets[k], 1e-6);
        }
    }

    [Fact]
    public void Fret_1_and_12_of_640_and_the_rule_of_eighteen()
    {
        Assert.Equal(35.9204399, FretScale.FromNutMm(640, 1), 1e-6);
        Assert.Equal(320, FretScale.FromNutMm(640, 12), 1e-9);

        // The old rule: fret 12 at 322.636427 on 650, 12.545 cents flat of the octave (computed).
        double ruleOfEighteen = 650 * (1 - Math.Pow(17.0 / 18, 12));
        Assert.Equal(322.636427, ruleOfEighteen, 1e-6);
        Assert.Equal(-12.545, FretScale.Cents(325 / (650 - ruleOfEighteen)), 5e-4);
    }

    // OpenStax, University Physics vol. 1, example 16.3.
    [Fact]
    public void Wave_speed_meets_the_textbook_example()
    {
        Assert.Equal(427.2286, VibratingString.WaveSpeedMPerS(56.40, 3.09e-4), 1e-3);
        double equalSpeedN = 5.78e-3 * Math.Pow(VibratingString.WaveSpeedMPerS(56.40, 3.09e-4), 2);
        Assert.Equal(1054.99, equalSpeedN, 0.01);
    }

    // L 0.65 m, E 4 GPa, 1100 kg/m3: T = mu (2 L f)^2, B = pi^3 E d^4 / (64 T L^2) (computed).
    [Theory]
    [InlineData(0.71, 329.6275569, 0.435511, 79.9711, 1.457482e-5)]
    [InlineData(0.82, 246.9416506, 0.580912, 59.8667, 3.463958e-5)]
    [InlineData(1.02, 195.997718, 0.898841, 58.3541, 8.508088e-5)]
    public void Nylon_cases(double diameter, double hz, double gPerM, double tension, double b)
    {
        double mass = 1100 * Math.PI * diameter * diameter / 4 * 1e-6;
        Assert.Equal(gPerM, mass * 1e3, 1e-6);
        double t = VibratingString.TensionN(mass, 650, hz);
        Assert.Equal(tension, t, 1e-3);
        double ei = VibratingString.BendingStiffnessNmm2(4000, diameter);
        double found = VibratingString.Inharmonicity(ei, t, 650);
        Assert.Equal(b, found, b * 1e-6);
        Assert.Equal(hz, VibratingString.FrequencyHz(t, mass, 650), 1e-9);
        Assert.Equal(
            3 * hz * Math.Sqrt(1 + (9 * b)),
            VibratingString.PartialHz(hz, found, 3),
            1e-5
        );
    }

    [Fact]
    public void A_set_lies_evenly_and_a_left_handed_one_mirrored()
    {
        StringSet right = StringSet.Of(Designs.Read(""));
        StringSet left = StringSet.Of(Designs.Read("", "hand = \"left\"\n"));
        Assert.Equal([6, 5, 4, 3, 2, 1], right.Strings.Select(each => each.Number));
        Assert.Equal(-21.5, right.Strings[0].NutYMm, 1e-9);
        Assert.Equal(29, right.Strings[5].SaddleYMm, 1e-9);
        Assert.Equal(8.6, right.Strings[1].NutYMm - right.Strings[0].NutYMm, 1e-9);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(right.Strings[i].NutYMm, -left.Strings[i].NutYMm, 1e-12);
            Assert.Equal(right.Strings[i].TensionN, left.Strings[i].TensionN, 1e-12);
        }
    }

    [Fact]
    public void Even_gaps_are_equal_between_the_strings_sides()
    {
        StringSet set = StringSet.Of(Designs.Read("[strings]\nlayout = \"even-gaps\"\n"));
        double[] gaps =
        [
            .. Enumerable
                .Range(1, 5)
                .Select(i =>
                    set.Strings[i].NutYMm
                    - set.Strings[i - 1].NutYMm
                    - (0.5 * (set.Strings[i].DiameterMm + set.Strings[i - 1].DiameterMm))
                ),
        ];
        Assert.All(gaps, gap => Assert.Equal(gaps[0], gap, 1e-9));
        Assert.Equal(43, set.Strings[5].NutYMm - set.Strings[0].NutYMm, 1e-9);
    }

    [Fact]
    public void Tension_goes_with_the_square_of_scale_and_pitch()
    {
        StringSet set = StringSet.Of(Designs.Read(""));
        Assert.Equal(set.Strings.Sum(each => each.TensionN), set.TotalTensionN, 1e-9);
        Assert.All(set.TensionChangesN(650, 440), change => Assert.Equal(0, change, 1e-9));
        IReadOnlyList<double> shorter = set.TensionChangesN(325, 440);
        IReadOnlyList<double> baroque = set.TensionChangesN(650, 415);
        for (int i = 0; i < 6; i++)
        {
            double t = set.Strings[i].TensionN;
            Assert.Equal(-0.75 * t, shorter[i], 1e-9);
            Assert.Equal(t * ((415.0 * 415 / (440 * 440)) - 1), baroque[i], 1e-9);
        }

        NoteName.TryRead("D2", out NoteName d2);
        NoteName[] drop = [.. set.Strings.Select(each => each.Note)];
        drop[0] = d2;
        double down = set.TensionChangesN(650, 440, drop)[0];
        Assert.Equal(set.Strings[0].TensionN * (Math.Pow(2, -4 / 12.0) - 1), down, 1e-9);
        Assert.Throws<ArgumentException>(() => set.TensionChangesN(650, 440, [d2]));
    }
}

using Formwright.Design.Sections;
using Formwright.Instrument.Necks;
using Xunit;

namespace Formwright.Instrument.Tests.Necks;

public sealed class CantileverTests
{
    private const double L = 325;
    private const double EI = 9e8;

    [Fact]
    public void An_end_moment_bends_it_by_ML2_over_2EI()
    {
        Cantilever beam = new([0, 100, 162.5, L]);
        double[] w = beam.Deflections(_ => 7000, _ => EI);
        Assert.Equal(7000 * L * L / (2 * EI), w[0], 1e-12);
        Assert.Equal(7000 * Math.Pow(L - 100, 2) / (2 * EI), w[1], 1e-12);
        Assert.Equal(0, w[^1]);

        // Bow under the chord in the middle: M L^2 / 8EI.
        Assert.Equal(7000 * L * L / (8 * EI), (w[0] / 2) - w[2], 1e-12);
    }

    // Depth-tapered cantilever under a tip load, delta EI0/PL^3 by tip/root depth (computed).
    [Theory]
    [InlineData(1, 1.0 / 3)]
    [InlineData(0.8, 0.392943914)]
    [InlineData(0.5, 0.545177444)]
    public void A_tapered_depth_meets_its_closed_form(double taper, double expected)
    {
        Cantilever beam = new([0, L / 3, 2 * L / 3, L]);
        double[] w = beam.Deflections(
            x => 10 * x,
            x => EI * Math.Pow(taper + ((1 - taper) * x / L), 3)
        );
        Assert.Equal(expected, w[0] * EI / (10 * L * L * L), 1e-7);
    }

    [Fact]
    public void The_error_falls_with_the_tenth_power_of_the_piece()
    {
        // Five Gauss points: order 10. A strong taper keeps the error above rounding.
        double ErrorOf(int pieces)
        {
            double[] places = [.. Enumerable.Range(0, pieces + 1).Select(i => L * i / pieces)];
            double[] w = new Cantilever(places).Deflections(
                x => 1e6 * x,
                x => EI * Math.Pow(0.5 + (0.5 * x / L), 3)
            );

            // delta = (P L^3 / EI0) * integral of s^2/(a + b s)^3, b = 1 - a.
            const double a = 0.5,
                b = 0.5;
            double exact =
                (Math.Log(1 / a) + (2 * a * (1 - (1 / a))) - (a * a / 2 * (1 - (1 / (a * a)))))
                / (b * b * b);
            return Math.Abs((w[0] * EI / (1e6 * L * L * L)) - exact);
        }

        Assert.InRange(Math.Log2(ErrorOf(2) / ErrorOf(4)), 8.5, 11);
    }

    [Theory]
    [InlineData(NeckShape.Round)]
    [InlineData(NeckShape.Full)]
    [InlineData(NeckShape.Square)]
    public void Section_forms_are_the_integrals_of_their_shape(NeckShape shape)
    {
        SectionForm form = SectionForm.Of(shape);
        double n = shape == NeckShape.Round ? 2 : 3;
        double Moment(int m)
        {
            const int steps = 200_000;
            double sum = 0;
            for (int i = 0; i < steps; i++)
            {
                double z = (i + 0.5) / steps;
                double width = shape == NeckShape.Square ? 1 : Math.Pow(1 - Math.Pow(z, n), 1 / n);
                sum += width * Math.Pow(z, m) / steps;
            }

            return sum;
        }

        Assert.Equal(Moment(0), form.A, 1e-6);
        Assert.Equal(Moment(1), form.S, 1e-6);
        Assert.Equal(Moment(2), form.J, 1e-6);
        if (shape == NeckShape.Round)
        {
            Assert.Equal(Math.PI / 4, form.A, 1e-12);
            Assert.Equal(1.0 / 3, form.S, 1e-12);
            Assert.Equal(Math.PI / 16, form.J, 1e-12);
        }
    }

    [Fact]
    public void One_wood_throughout_is_one_rectangle_and_a_bar_of_the_same_wood_changes_nothing()
    {
        NeckProfile plain = Profile(0, 12);
        NeckProfile barred = Profile(6, 12);
        NeckPlace place = plain.At(0);
        CompositeSection one = plain.SectionAt(place, 6, 12_000, 12_000);
        Assert.Equal(12_000 * 60 * Math.Pow(24, 3) / 12, one.BendingStiffnessNmm2, 1e-3);
        Assert.Equal((18.0 / 2) - (6.0 / 2), one.AxisBelowFaceMm, 1e-9);
        CompositeSection same = barred.SectionAt(place, 6, 12_000, 12_000);
        Assert.Equal(one.BendingStiffnessNmm2, same.BendingStiffnessNmm2, 1e-3);
        CompositeSection stiffer = Profile(6, 120).SectionAt(place, 6, 12_000, 12_000);
        Assert.True(stiffer.BendingStiffnessNmm2 > one.BendingStiffnessNmm2);
    }

    [Fact]
    public void Two_layers_meet_the_closed_form_of_a_bimetal_strip()
    {
        // EI of two bonded layers about their common axis: (E1^2 h1^4 + E2^2 h2^4 + E1 E2 h1 h2 (4 h1^2 + 6 h1 h2 + 4 h2^2)) b / 12 (E1 h1 + E2 h2).
        const double e1 = 9000,
            h1 = 17,
            e2 = 16_000,
            h2 = 6,
            b = 55;
        double expected =
            (
                (e1 * e1 * Math.Pow(h1, 4))
                + (e2 * e2 * Math.Pow(h2, 4))
                + (e1 * e2 * h1 * h2 * ((4 * h1 * h1) + (6 * h1 * h2) + (4 * h2 * h2)))
            )
            * b
            / (12 * ((e1 * h1) + (e2 * h2)));
        NeckProfile profile = Profile(0, 12);
        CompositeSection found = profile.SectionAt(new NeckPlace(0, b, h1), h2, e1, e2);
        Assert.Equal(expected, found.BendingStiffnessNmm2, expected * 1e-12);
    }

    private static NeckProfile Profile(double barWidth, double barModulus) =>
        new(
            [new NeckPlace(0, 60, 18), new NeckPlace(L, 60, 18)],
            SectionForm.Of(NeckShape.Square),
            new NeckBarDesign(barWidth, 10, 2, barModulus)
        );
}

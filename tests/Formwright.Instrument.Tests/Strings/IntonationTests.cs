using CsCheck;
using Formwright.Design.Sections;
using Formwright.Instrument.Strings;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Strings;

public sealed class IntonationTests
{
    private static readonly IReadOnlyList<double> Frets = FretScale.Table(650, 19);

    private static readonly Gen<FrettedString> Strung = Gen.Select(
        Gen.Double[0, 2000],
        Gen.Double[0, 60],
        Gen.Double[0.2, 1.2],
        Gen.Double[4, 8],
        (ea, ei, cn, saddle) => new FrettedString(Wire(1, ea, ei, 10), 650, cn, saddle)
    );

    [Fact]
    public void A_limp_string_that_does_not_stretch_needs_no_compensation()
    {
        FrettedString[] strings =
        [
            .. new[] { -20.0, 0, 20 }.Select(
                (y, i) => new FrettedString(Wire(3 - i, 0, 0, y), 650, 0.6, 6)
            ),
        ];
        Intonation found = Intonation.Of(strings, Frets);
        foreach (
            IntonationPlan plan in new[]
            {
                found.None,
                found.Straight,
                found.PerString,
                found.NutAndSaddle,
            }
        )
        {
            Assert.True(plan.Converged);
            Assert.All(plan.Strings, each => Assert.Equal(0, each.SaddleMm, 1e-9));
            Assert.All(plan.Strings, each => Assert.Equal(0, each.NutMm, 1e-9));
            Assert.Equal(0, plan.RmsCents, 1e-9);
        }
    }

    [Fact]
    public void Stretch_and_stiffness_each_ask_for_a_saddle_further_back()
    {
        FrettedString stretch = new(Wire(1, 1600, 0, 0), 650, 0.6, 6);
        FrettedString stiff = new(Wire(1, 0, 50, 0), 650, 0.6, 6);
        Assert.True(FitOne(stretch, false).SaddleMm > 0.1);
        Assert.True(FitOne(stiff, false).SaddleMm > 0.1);

        // Order of magnitude of a nylon treble: between 0.5 and 5 mm, as makers set saddles back (common practice).
        FrettedString nylon = new(
            Wire(
                3,
                4000 * Math.PI * 1.03 * 1.03 / 4,
                VibratingString.BendingStiffnessNmm2(4000, 1.03),
                0
            ),
            650,
            0.5,
            6
        );
        Assert.InRange(FitOne(nylon, false).SaddleMm, 0.5, 5);
    }

    [Fact]
    public void The_slopes_are_those_of_the_cents() =>
        Gen.Select(Strung, Gen.Int[1, 19], Gen.Double[-1, 1], Gen.Double[-1, 4])
            .Holds(
                (string_, fret, nut, saddle) =>
                {
                    const double h = 1e-4;
                    (_, double perNut, double perSaddle) = string_.Evaluate(
                        Frets[fret],
                        fret,
                        nut,
                        saddle
                    );
                    double n =
                        (
                            string_.Cents(Frets[fret], fret, nut + h, saddle)
                            - string_.Cents(Frets[fret], fret, nut - h, saddle)
                        ) / (2 * h);
                    double s =
                        (
                            string_.Cents(Frets[fret], fret, nut, saddle + h)
                            - string_.Cents(Frets[fret], fret, nut, saddle - h)
                        ) / (2 * h);
                    return Math.Abs(n - perNut) < 1e-5 * (1 + Math.Abs(n))
                        && Math.Abs(s - perSaddle) < 1e-5 * (1 + Math.Abs(s));
                }
            );

    [Fact]
    public void The_fit_is_a_minimum_and_more_freedom_is_never_worse() =>
        Strung.Holds(string_ =>
        {
            FrettedString[] pair =
            [
                string_,
                string_ with
                {
                    Wire = string_.Wire with { SaddleYMm = -10 },
                },
            ];
            Intonation found = Intonation.Of(pair, Frets);
            StringIntonation both = found.NutAndSaddle.Strings[0];
            foreach (
                (double n, double s) in new[] { (0.01, 0.0), (-0.01, 0), (0, 0.01), (0, -0.01) }
            )
            {
                double sum = 0;
                for (int k = 1; k < Frets.Count; k++)
                {
                    double cents = string_.Cents(Frets[k], k, both.NutMm + n, both.SaddleMm + s);
                    sum += cents * cents;
                }

                if (Math.Sqrt(sum / 19) < both.RmsCents)
                {
                    return false;
                }
            }

            return found.NutAndSaddle.RmsCents <= found.PerString.RmsCents + 1e-12
                && found.PerString.RmsCents <= found.Straight.RmsCents + 1e-9
                && found.Straight.RmsCents <= found.None.RmsCents + 1e-9
                && found.NutAndSaddle.Converged
                && found.Straight.Converged
                && found.PerString.Converged;
        });

    [Fact]
    public void Equal_strings_need_a_square_saddle_and_mirrored_strings_a_mirrored_one()
    {
        FrettedString[] mixed =
        [
            .. Enumerable
                .Range(0, 6)
                .Select(i => new FrettedString(
                    Wire(6 - i, 400 + (300 * i), 5 * i, -29 + (11.6 * i)),
                    650,
                    0.5,
                    6
                )),
        ];
        FrettedString[] mirrored =
        [
            .. mixed.Select(each =>
                each with
                {
                    Wire = each.Wire with { SaddleYMm = -each.Wire.SaddleYMm },
                }
            ),
        ];
        IntonationPlan one = Intonation.PlanFor(SaddleCompensation.Straight, mixed, Frets);
        IntonationPlan other = Intonation.PlanFor(SaddleCompensation.Straight, mirrored, Frets);
        Assert.Equal(one.SaddleSlope, -other.SaddleSlope, 1e-9);
        Assert.Equal(one.SaddleSetBackMm, other.SaddleSetBackMm, 1e-9);
        Assert.True(one.SaddleSlope > 0);

        FrettedString[] equal =
        [
            .. mixed.Select(each =>
                each with
                {
                    Wire = mixed[3].Wire with { SaddleYMm = each.Wire.SaddleYMm },
                }
            ),
        ];
        Assert.Equal(
            0,
            Intonation.PlanFor(SaddleCompensation.Straight, equal, Frets).SaddleSlope,
            1e-9
        );
    }

    [Fact]
    public void A_longer_scale_scales_the_errors_away()
    {
        // Lengths, heights and (EI/T) scaled alike give the same cents: the model has no length of its own.
        FrettedString small = new(Wire(1, 1600, 20, 0), 650, 0.5, 6);
        FrettedString large = new(Wire(1, 1600, 80, 0), 1300, 1, 12);
        for (int k = 1; k <= 19; k++)
        {
            Assert.Equal(
                small.Cents(Frets[k], k, 0.1, 1.5),
                large.Cents(2 * Frets[k], k, 0.2, 3),
                1e-9
            );
        }
    }

    private static StringIntonation FitOne(FrettedString string_, bool withNut)
    {
        FrettedString[] pair =
        [
            string_,
            string_ with
            {
                Wire = string_.Wire with { SaddleYMm = 20 },
            },
        ];
        return Intonation
            .PlanFor(
                withNut ? SaddleCompensation.NutAndSaddle : SaddleCompensation.PerString,
                pair,
                Frets
            )
            .Strings[0];
    }

    private static InstrumentString Wire(int number, double ea, double ei, double y) =>
        new(number, new NoteName(64), 329.6, 0.44e-3, 0.7, 4000, ea, ei, 70, 0, y, y);
}

using System.Globalization;
using CsCheck;
using Formwright.Testing;
using Xunit;

namespace Formwright.Design.Tests;

public sealed class LengthsTests
{
    private static readonly Gen<CultureInfo> Cultures = Gen.OneOf(
        CultureInfo.InvariantCulture,
        CultureInfo.GetCultureInfo("en"),
        CultureInfo.GetCultureInfo("es")
    );

    [Theory]
    [InlineData("12.5", 12.5)]
    [InlineData("12,5", 12.5)]
    [InlineData(" 12,5 mm ", 12.5)]
    [InlineData("1.2cm", 12)]
    [InlineData("0.65 m", 650)]
    [InlineData("1 in", 25.4)]
    [InlineData("3/4 in", 19.05)]
    [InlineData("3/4\"", 19.05)]
    [InlineData("1 3/4\"", 44.45)]
    [InlineData("1-3/4 in", 44.45)]
    [InlineData("1 + 3/4 in", 44.45)]
    [InlineData("1¾ in", 44.45)]
    [InlineData("⅝ in.", 15.875)]
    [InlineData("3⁄4 pulgadas", 19.05)]
    [InlineData("1 ft", 304.8)]
    [InlineData("-1.5", -1.5)]
    [InlineData("−1,5 mm", -1.5)]
    [InlineData("-1 1/2 in", -38.1)]
    [InlineData("12.", 12)]
    [InlineData(".5", 0.5)]
    [InlineData("18 MM", 18)]
    public void What_people_write_is_read(string text, double expected)
    {
        Assert.Equal(LengthFault.None, Lengths.Read(text, out double mm));
        Assert.Equal(expected, mm, 12);
    }

    [Theory]
    [InlineData("", LengthFault.NotANumber)]
    [InlineData("mm", LengthFault.NotANumber)]
    [InlineData("1.234,5", LengthFault.NotANumber)]
    [InlineData("1,234.5", LengthFault.NotANumber)]
    [InlineData("1 234", LengthFault.NotANumber)]
    [InlineData("1'234", LengthFault.NotANumber)]
    [InlineData("12 - 3/4 in", LengthFault.NotANumber)]
    [InlineData("1/0 in", LengthFault.NotANumber)]
    [InlineData("1.5/2 in", LengthFault.NotANumber)]
    [InlineData("1e3", LengthFault.NotANumber)]
    [InlineData("NaN", LengthFault.NotANumber)]
    [InlineData("0x10", LengthFault.NotANumber)]
    [InlineData("--1", LengthFault.NotANumber)]
    [InlineData("12 mm mm", LengthFault.NotANumber)]
    [InlineData("6 \r\"", LengthFault.NotANumber)]
    [InlineData("6\n", LengthFault.NotANumber)]
    [InlineData("٣ mm", LengthFault.NotANumber)]
    [InlineData("½½ in", LengthFault.NotANumber)]
    [InlineData("18 parsecs", LengthFault.UnknownUnit)]
    [InlineData("18 µm", LengthFault.UnknownUnit)]
    public void What_is_unclear_is_refused(string text, LengthFault expected)
    {
        Assert.Equal(expected, Lengths.Read(text, out double mm));
        Assert.True(double.IsNaN(mm));
    }

    [Theory]
    [InlineData("25,4", 645.16)]
    [InlineData("25.4 mm", 25.4)]
    [InlineData("1/2", 12.7)]
    public void A_page_in_inches_reads_bare_figures_as_inches(string text, double expected)
    {
        Assert.Equal(LengthFault.None, Lengths.Read(text, out double mm, Lengths.MmPerInch));
        Assert.Equal(expected, mm, 10);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void A_bare_unit_has_a_size(double mmPerBareUnit) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Lengths.Read("1", out _, mmPerBareUnit));

    [Fact]
    public void Any_text_gives_an_answer() =>
        Gen.String[Gen.OneOf(Gen.Char["0123456789,./-+ \"'inmcft½¾⅛−⁄″"], Gen.Char), 0, 80]
            .Holds(
                text =>
                {
                    LengthFault fault = Lengths.Read(text, out double mm);
                    return fault == LengthFault.None ? double.IsFinite(mm) : double.IsNaN(mm);
                },
                iter: 20_000
            );

    [Fact]
    public void Whole_and_fraction_add_up() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200], Gen.Int[1, 64], Gen.Bool)
            .Holds(
                (whole, top, bottom, minus) =>
                {
                    string sign = minus ? "-" : "";
                    Assert.Equal(
                        LengthFault.None,
                        Lengths.Read($"{sign}{whole} {top}/{bottom} in", out double mm)
                    );
                    double expected = (whole + ((double)top / bottom)) * 25.4 * (minus ? -1 : 1);
                    Assert.Equal(expected, mm, 9);
                },
                iter: 5_000
            );

    [Fact]
    public void Comma_and_point_mean_the_same() =>
        Gen.Select(
                Gen.Int[0, 99_999],
                Gen.Int[0, 999_999],
                Gen.OneOf("", " mm", "cm", " in", " ft")
            )
            .Holds(
                (whole, part, unit) =>
                {
                    Lengths.Read($"{whole},{part:000000}{unit}", out double comma);
                    Lengths.Read($"{whole}.{part:000000}{unit}", out double point);
                    return comma == point && point >= whole;
                },
                iter: 5_000
            );

    [Fact]
    public void Written_lengths_read_back_to_what_was_written() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.Int[0, 6], Cultures, Gen.Bool)
            .Holds(
                (mm, decimals, culture, inches) =>
                {
                    WrittenLength written = inches
                        ? LengthFormat.Inches(mm, decimals, culture)
                        : LengthFormat.Millimetres(mm, decimals, culture);
                    double unit = inches ? 25.4 : 1;
                    Assert.Equal(LengthFault.None, Lengths.Read(written.Text, out double back));
                    Assert.Equal(mm + written.ErrorMm, back, 9);
                    Assert.True(
                        Math.Abs(written.ErrorMm)
                            <= 0.5 * unit * Math.Pow(10, -decimals) * (1 + 1e-9) + 1e-9
                    );
                },
                iter: 10_000
            );

    [Fact]
    public void Written_fractions_read_back_to_what_was_written() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.OneOf(1, 2, 4, 8, 16, 32, 64))
            .Holds(
                (mm, denominator) =>
                {
                    WrittenLength written = LengthFormat.InchFraction(mm, denominator);
                    Assert.Equal(LengthFault.None, Lengths.Read(written.Text, out double back));
                    Assert.Equal(mm + written.ErrorMm, back, 9);
                    Assert.True(
                        Math.Abs(written.ErrorMm) <= 12.7 / denominator * (1 + 1e-9) + 1e-9
                    );
                },
                iter: 10_000
            );
}

using System.Globalization;
using Xunit;

namespace Formwright.Design.Tests;

public sealed class LengthFormatTests
{
    [Theory]
    [InlineData(12.5, 2, "en", "12.50 mm", 0)]
    [InlineData(12.5, 2, "es", "12,50 mm", 0)]
    [InlineData(12345.678, 1, "es", "12345,7 mm", 0.022)]
    [InlineData(-0.001, 2, "en", "0.00 mm", 0.001)]
    [InlineData(0.125, 2, "en", "0.13 mm", 0.005)]
    [InlineData(650, 0, "en", "650 mm", 0)]
    public void Millimetres_follow_the_person(
        double mm,
        int decimals,
        string culture,
        string text,
        double error
    )
    {
        WrittenLength written = LengthFormat.Millimetres(
            mm,
            decimals,
            CultureInfo.GetCultureInfo(culture)
        );
        Assert.Equal(text, written.Text);
        Assert.Equal(error, written.ErrorMm, 9);
    }

    [Theory]
    [InlineData(25.4, 64, "1 in", 0)]
    [InlineData(19.05, 64, "3/4 in", 0)]
    [InlineData(44.45, 64, "1 3/4 in", 0)]
    [InlineData(-44.45, 64, "-1 3/4 in", 0)]
    [InlineData(488, 64, "19 7/32 in", 0.15625)]
    [InlineData(488, 4, "19 1/4 in", 0.95)]
    [InlineData(0, 64, "0 in", 0)]
    [InlineData(0.1, 64, "0 in", -0.1)]
    [InlineData(-0.1, 64, "0 in", 0.1)]
    [InlineData(25.3, 64, "1 in", 0.1)]
    public void Inches_are_fractions_in_lowest_terms(
        double mm,
        int denominator,
        string text,
        double error
    )
    {
        WrittenLength written = LengthFormat.InchFraction(mm, denominator);
        Assert.Equal(text, written.Text);
        Assert.Equal(error, written.ErrorMm, 9);
    }

    [Fact]
    public void Decimal_inches()
    {
        WrittenLength written = LengthFormat.Inches(12.5, 3, CultureInfo.GetCultureInfo("es"));
        Assert.Equal("0,492 in", written.Text);
        Assert.Equal(0.492 * 25.4 - 12.5, written.ErrorMm, 9);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e308)]
    public void What_is_no_length_is_the_callers_mistake(double mm)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Millimetres(mm, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Inches(mm, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.InchFraction(mm));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(128)]
    [InlineData(-8)]
    public void No_rule_has_such_a_fraction(int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.InchFraction(1, denominator));
}

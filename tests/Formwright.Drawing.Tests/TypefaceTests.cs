namespace Formwright.Drawing.Tests;

public sealed class TypefaceTests
{
    public static TheoryData<Weight> Weights => [Weight.Regular, Weight.Medium, Weight.SemiBold];

    [Theory]
    [MemberData(nameof(Weights))]
    public void Figures_are_tabular(Weight weight)
    {
        Typeface face = Typeface.Of(weight);
        double zero = face.WidthMm("0", 2.5);
        Assert.All("123456789", c => Assert.Equal(zero, face.WidthMm(c.ToString(), 2.5)));
    }

    [Theory]
    [MemberData(nameof(Weights))]
    public void Face_has_every_letter_of_a_Spanish_sheet(Weight weight) =>
        Assert.All(
            "áéíóúüñÁÉÍÓÚÜÑ¿¡½¼¾²³°±×·ØR–…«»“”’.,;:()%/+-=<>!?&",
            c => Assert.True(Typeface.Of(weight).Has(c), $"no {c}")
        );

    [Fact]
    public void Widths_are_those_of_the_font_table()
    {
        // hmtx of the Regular as shipped, in thousandths of the em, read with an independent script: . 234, comma 221, hyphen 354.
        Typeface face = Typeface.Of(Weight.Regular);
        // A capital is 0.7 em high (OS/2 sCapHeight 700).
        Assert.Equal(0.7, face.CapitalOverEm);
        Assert.Equal((234 + 221 + 354) / 700.0 * 3.5, face.WidthMm(".,-", 3.5), 1e-9);
        Assert.Equal(0, face.WidthMm("", 3.5));
    }

    [Theory]
    [InlineData(1.8, 2.5)]
    [InlineData(2.5, 3.5)]
    [InlineData(3.5, 5)]
    [InlineData(10, 10)]
    public void Larger_is_the_next_height_of_ISO_3098(double height, double next) =>
        Assert.Equal(next, (TextStyle.Body with { HeightMm = height }).Larger.HeightMm);
}

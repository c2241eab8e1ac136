namespace Formwright.Writers.Tests;

public sealed class PngTests
{
    private static byte[] Write(double pxPerMm)
    {
        using MemoryStream stream = new();
        PngWriter.Write(stream, Sample.Sheet(), pxPerMm);
        return stream.ToArray();
    }

    [Fact]
    public void Same_sheet_gives_the_same_bytes() => Assert.Equal(Write(4), Write(4));

    [Fact]
    public void Bars_are_as_long_as_they_should_be()
    {
        Picture page = Picture.OfPng(Write(10), 10);
        Assert.Equal((4200, 2970), (page.Width, page.Height));
        List<double> across = page.Strokes(24, 13.1, 128, 14, acrossX: true);
        Assert.Equal(100, across[^1] - across[0], 0.02);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1000)]
    public void Impossible_sizes_throw(double pxPerMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Write(pxPerMm));
}

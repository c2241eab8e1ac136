using System.Globalization;

namespace Formwright.Web.Tests;

public sealed class WordsTests
{
    [Fact]
    public void EveryTextStandsInBothLanguages() =>
        Assert.Equal(
            WebWords.Of.Keys(CultureInfo.InvariantCulture).Order(),
            WebWords.Of.Keys(CultureInfo.GetCultureInfo("es")).Order()
        );
}

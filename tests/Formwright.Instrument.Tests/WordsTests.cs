using System.Globalization;
using Xunit;

namespace Formwright.Instrument.Tests;

public sealed class WordsTests
{
    [Fact]
    public void BothLanguagesHaveTheSameTexts() =>
        Assert.Equal(
            InstrumentWords.Of.Keys(CultureInfo.InvariantCulture).Order(),
            InstrumentWords.Of.Keys(new CultureInfo("es")).Order()
        );
}

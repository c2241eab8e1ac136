using CsCheck;
using Formwright.Instrument.Boards;
using Formwright.Testing;
using Xunit;

namespace Formwright.Instrument.Tests.Boards;

public sealed class TapSpectrumTests
{
    // Notes of a spruce plate with loss factors of 0.01 to 0.03 (α = η π f).
    private static readonly Taps.Note[] Board =
    [
        new(37.2, 0.2, 1.4),
        new(62.85, 0.35, 2.6),
        new(118.4, 0.25, 7.5),
        new(171.3, 0.15, 9),
    ];

    [Theory]
    [InlineData(44100, 0.0)]
    [InlineData(48000, 0.003)]
    [InlineData(22050, 0.01)]
    public void FindsEveryNoteAndNoOther(int rate, double noise)
    {
        TapSpectrum spectrum = TapSpectrum.Of(Taps.Of(rate, 2.5, noise, 17, Board), 20, 400);
        Assert.Equal(Board.Length, spectrum.Peaks.Count);
        for (int i = 0; i < Board.Length; i++)
        {
            // A tenth of the resolution of 2.4 s of sound.
            Assert.Equal(Board[i].Hz, spectrum.Peaks[i].FrequencyHz, 0.042);
            Assert.Equal(1, spectrum.Peaks[i].DecayPerS / Board[i].DecayPerS, 0.1);
        }
    }

    [Fact]
    public void OneCleanNoteIsFoundFarBelowTheResolution() =>
        Gen.Select(Gen.Double[40, 800], Gen.Double[0.005, 0.03])
            .Holds(
                (hz, loss) =>
                {
                    double alpha = loss * Math.PI * hz;
                    Recording tap = Taps.Of(16000, 1.5, 0, 1, new Taps.Note(hz, 0.5, alpha));
                    TapSpectrum spectrum = TapSpectrum.Of(tap, 20, 1500);
                    TapPeak peak = spectrum.Peaks.MaxBy(each => each.LevelDb);
                    Assert.Equal(hz, peak.FrequencyHz, 0.1 * spectrum.ResolutionHz);
                    Assert.Equal(loss, peak.LossFactor, 0.05 * loss);
                },
                iter: 10
            );

    [Fact]
    public void NoiseAloneHasNoNotes()
    {
        for (int seed = 1; seed <= 8; seed++)
        {
            TapSpectrum spectrum = TapSpectrum.Of(Taps.Of(22050, 2, 0.1, seed), 20, 1500);
            Assert.Empty(spectrum.Peaks);
        }
    }

    [Fact]
    public void ThePictureKeepsThePeaks()
    {
        TapSpectrum spectrum = TapSpectrum.Of(Taps.Of(48000, 2.5, 0.001, 3, Board));
        Assert.InRange(spectrum.FrequenciesHz.Count, 100, 1500);
        Assert.Equal(spectrum.FrequenciesHz.Count, spectrum.LevelsDb.Count);
        Assert.Equal(0, spectrum.LevelsDb.Max(), 1e-9);
        foreach (TapPeak peak in spectrum.Peaks)
        {
            Assert.Contains(
                spectrum.FrequenciesHz.Zip(spectrum.LevelsDb),
                point =>
                    Math.Abs(point.First - peak.FrequencyHz) < 0.5
                    && Math.Abs(point.Second - peak.LevelDb) < 0.1
            );
        }
    }
}

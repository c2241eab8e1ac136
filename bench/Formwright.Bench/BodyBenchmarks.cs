using BenchmarkDotNet.Attributes;
using Formwright.Instrument;
using Formwright.Instrument.Boards;
using Formwright.Instrument.Body;
using Formwright.Instrument.Body.Back;
using Formwright.Instrument.Body.Ribs;
using Formwright.Instrument.Body.Soundboard;
using Formwright.Instrument.Wood;

namespace Formwright.Bench;

/// <summary>Ribs, back and braces of the Heron, all of its body, a tap of a second and its fit. Outline and dome are there already.</summary>
[InProcess, WarmupCount(3), IterationCount(12), MemoryDiagnoser, MinColumn]
public class BodyBenchmarks
{
    private Guitar guitar = null!;
    private BackPlan back = null!;
    private Timber spruce = null!;
    private Recording tap = null!;

    [GlobalSetup]
    public void Setup()
    {
        guitar = Guitar.Build(ActionBenchmarks.Heron()).Guitar!;
        back = BackPlan.Of(guitar.Design, guitar.Outline, guitar.Dome.Field);
        spruce = Timber.Of(guitar.Design.Wood.Soundboard);
        float[] samples = new float[44100];
        for (int i = 0; i < samples.Length; i++)
        {
            double t = i / 44100.0;
            samples[i] = (float)(Math.Exp(-4 * t) * Math.Cos(2 * Math.PI * 83.1 * t));
        }

        tap = new Recording(samples, 44100);
    }

    [Benchmark]
    public RibPlan Ribs() =>
        RibMaker.Of(guitar.Design, guitar.Outline, guitar.Dome.Field, back.Depth);

    [Benchmark]
    public BackPlan Back() => BackPlan.Of(guitar.Design, guitar.Outline, guitar.Dome.Field);

    [Benchmark]
    public SoundboardPlan Braces() =>
        SoundboardPlan.Of(guitar.Design, guitar.Outline, guitar.Dome.Field, spruce);

    [Benchmark]
    public BodyPlan WholeBody() => BodyPlan.Of(guitar);

    [Benchmark]
    public TapSpectrum Tap() => TapSpectrum.Of(tap);

    [Benchmark]
    public TapFit TapFitted() => TapFit.Of(550, 200, 4, 180, 80, 130, 45, spruce);
}

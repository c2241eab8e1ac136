using BenchmarkDotNet.Attributes;
using Formwright.Design;
using Formwright.Design.Sections;
using Formwright.Instrument;
using Formwright.Jigs.Brackets;

namespace Formwright.Bench;

/// <summary>The bracket jig: one instrument set on it, and the fewest slots for families of three and thirty.</summary>
[InProcess, WarmupCount(1), IterationCount(5), MinColumn]
public class JigBenchmarks
{
    private Guitar heron = null!;
    private Guitar[] three = null!;
    private Guitar[] thirty = null!;

    [GlobalSetup]
    public void Setup()
    {
        heron = Build(ActionBenchmarks.Heron());
        three = [heron, Build(Sized(heron.Design, 0.945, 0)), Build(Sized(heron.Design, 0.845, 0))];
        thirty =
        [
            .. Enumerable
                .Range(0, 30)
                .Select(i => Build(Sized(heron.Design, 0.84 + (0.17 * i / 29), i % 5))),
        ];
    }

    [Benchmark]
    public JigPlan One() => JigMaker.Of(heron);

    [Benchmark]
    public JigPlan FamilyOfThree() => JigMaker.Of(three, heron.Design.Jig);

    [Benchmark]
    public JigPlan FamilyOfThirty() => JigMaker.Of(thirty, heron.Design.Jig);

    private static Guitar Build(InstrumentDesign design) => Guitar.Build(design).Guitar!;

    // Smaller and larger instruments of five shapes: each is a little broader at the waist and fuller in the upper bout than the one before.
    private static InstrumentDesign Sized(InstrumentDesign design, double size, int shape)
    {
        OutlineDesign outline = design.Outline;
        return design with
        {
            Outline = outline with
            {
                BodyLengthMm = outline.BodyLengthMm * size,
                UpperBout = Bout(outline.UpperBout, 2 * shape),
                Waist = Bout(outline.Waist, 3 * shape),
                LowerBout = Bout(outline.LowerBout, -2 * shape),
            },
            Soundhole = design.Soundhole with { AtMm = design.Soundhole.AtMm * size },
        };

        BoutDesign Bout(BoutDesign bout, double wider) =>
            bout with
            {
                AtMm = bout.AtMm * size,
                WidthMm = (bout.WidthMm * size) + wider,
            };
    }
}

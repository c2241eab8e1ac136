using Formwright.Curves;
using Xunit;

namespace Formwright.Trace.Tests;

/// <summary>Planted bumps are found at their place and height, and none where there is none.</summary>
public class BumpTests
{
    public static TheoryData<string, double, double, int> Planted()
    {
        TheoryData<string, double, double, int> cases = [];
        int seed = 0;
        foreach (string model in (string[])["heron", "dunlin", "plover"])
        {
            foreach (
                (double length, double height) in ((double, double)[])
                    [
                        (10, 0.15),
                        (10, -1),
                        (20, -0.1),
                        (30, 0.3),
                        (40, 1),
                        (60, 0.1),
                        (60, -0.3),
                        (60, 1),
                    ]
            )
            {
                cases.Add(model, length, height, ++seed);
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Planted))]
    public void A_planted_bump_is_found(string model, double length, double height, int seed)
    {
        Outline outline = Given.Model(model);
        Random random = new(seed);
        double half = outline.HalfPerimeterMm;
        double arc = 40 + (random.NextDouble() * (half - 80));
        // Every other bump on the bass side.
        Point[] bumpy = Given.Half(outline.Half, 0.5, 0.03, random, (arc, length, height));
        Point[] clean = Given.Half(outline.Half, 0.5, 0.03, random);
        bool isTreble = seed % 2 == 0;
        TraceResult trace = Given.Run(
            Given.Whole(isTreble ? bumpy : clean, isTreble ? clean : bumpy, turn: 0.3 * seed)
        );
        Bump bump = Assert.Single(trace.Bumps);
        double allowed = Math.Max(0.05, 0.1 * Math.Abs(height));
        Assert.InRange(bump.HeightMm, Math.Abs(height) - allowed, Math.Abs(height) + allowed);
        Assert.InRange(bump.ArcMm, arc - 5, arc + 5);
        Assert.Equal(height > 0, bump.IsProud);
        Assert.Equal(isTreble ? TraceSide.Treble : TraceSide.Bass, bump.Side);
        Assert.InRange(bump.LengthMm, 0.4 * length, 1.6 * length);
        Assert.Equal(outline.Half.At(arc).Position.X, bump.UMm, 5.0);
        // The points around its top stand off as far as it says, but for their noise.
        double[] top =
        [
            .. trace
                .StandOff[bump.Side]
                .Where(point => Math.Abs(point.X - bump.ArcMm) < 2)
                .Select(point => point.Y),
        ];
        Assert.Equal(
            bump.IsProud ? bump.HeightMm : -bump.HeightMm,
            top.Average(),
            0.05 + (0.2 * bump.HeightMm)
        );
        // The fair outline holds its tolerance although the bump does not.
        Assert.InRange(
            Given.Apart(trace.Fair, outline),
            0,
            0.05 + (0.05 * Math.Abs(height)) + 0.01
        );
    }

    [Fact]
    public void Several_bumps_come_in_the_order_of_how_much_they_turn_the_edge()
    {
        Outline outline = Given.Model("heron");
        Random random = new(12);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(outline.Half, 0.5, 0.02, random, (120, 50, 0.3), (430, 12, 0.3)),
                Given.Half(outline.Half, 0.5, 0.02, random, (600, 25, -0.3))
            )
        );
        Assert.Equal(3, trace.Bumps.Count);
        Assert.Equal(
            [430.0, 600, 120],
            trace.Bumps.Select(bump => Math.Round(bump.ArcMm / 10) * 10)
        );
        Assert.Equal([true, false, true], trace.Bumps.Select(bump => bump.IsProud));
        Assert.Equal(trace.Bumps.OrderByDescending(bump => bump.TurnDeg), trace.Bumps);
    }

    // Two rounds of all models and noises here; bench/Formwright.Fuzz runs the thousand: clean-traces --cases 1000.
    [Fact]
    public void Clean_traces_have_no_bump() =>
        Assert.Empty(Enumerable.Range(1, 42).SelectMany(CleanTraces.Run));

    [Fact]
    public void What_the_noise_hides_is_said()
    {
        Outline outline = Given.Model("heron");
        Random random = new(4);
        TraceResult trace = Given.Run(
            Given.Whole(
                Given.Half(outline.Half, 0.7, 0.2, random),
                Given.Half(outline.Half, 0.7, 0.2, random)
            )
        );
        // Six standard deviations of a raised cosine fitted to points of 0.2 mm noise, 0.7 mm apart.
        Assert.Equal(6 * 0.2 / Math.Sqrt(0.375 * 10 / 0.7), trace.Floor.HeightMm(10), 0.06);
        Assert.Equal(6 * 0.2 / Math.Sqrt(0.375 * 40 / 0.7), trace.Floor.HeightMm(40), 0.03);
    }
}

using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Instrument.Body.Soundboard;

/// <summary>
/// Lines of the fan layouts that a maker can start from. They are our own, set out from the outline alone: from a gap below the lower harmonic bar
/// (or the soundhole) to the tail, spread over shares of the lower bout's width. Where a line would leave the room inside the linings it ends.
/// </summary>
/// <param name="FromU">Station where the fan may begin, mm.</param>
/// <param name="TailU">Station of the tail, mm.</param>
/// <param name="BoutWidth">Width of the lower bout, mm.</param>
internal sealed record FanLines(double FromU, double TailU, double BoutWidth)
{
    internal readonly record struct Line(BraceKind Kind, Point From, Point To);

    /// <summary>The lines of a layout, before they are cut to the room inside the linings.</summary>
    internal IEnumerable<Line> Of(BraceLayout layout) =>
        layout switch
        {
            BraceLayout.FanFive => Fan(5, 0.085, 0.135, 0),
            BraceLayout.FanSeven => Fan(7, 0.062, 0.1, 0).Concat(Closing()),
            BraceLayout.SkewedSeven => Fan(7, 0.06, 0.097, 0.03).Append(Slanting()),
            BraceLayout.Lattice => Lattice(),
            _ => [],
        };

    /// <summary>Braces spread from the gap to the tail; the skew draws them together towards the treble side, as a share of the spacing per brace.</summary>
    private IEnumerable<Line> Fan(int count, double near, double far, double skew)
    {
        for (int i = 0; i < count; i++)
        {
            double k = i - ((count - 1) / 2.0);
            double place = k - (skew * k * k);
            yield return new(
                BraceKind.Fan,
                new(FromU, place * near * BoutWidth),
                new(TailU, place * far * BoutWidth)
            );
        }
    }

    // Two bars that close the fan in front of the tail block.
    private IEnumerable<Line> Closing()
    {
        foreach (int side in new[] { -1, 1 })
        {
            yield return new(
                BraceKind.ClosingBar,
                new(TailU - (0.115 * BoutWidth), side * 0.03 * BoutWidth),
                new(TailU - (0.215 * BoutWidth), side * 0.33 * BoutWidth)
            );
        }
    }

    // One low bar that slants across under the treble half, from the bar towards the widest place.
    private Line Slanting() =>
        new(
            BraceKind.ClosingBar,
            new(FromU, 0.02 * BoutWidth),
            new(FromU + (0.24 * BoutWidth), 0.47 * BoutWidth)
        );

    // Two families at 33° to the centreline.
    private IEnumerable<Line> Lattice()
    {
        double step = 0.155 * BoutWidth;
        double length = TailU - FromU;
        double run = length * Math.Tan(33 * Math.PI / 180);
        int most = (int)Math.Ceiling((BoutWidth + run) / step);
        foreach (int side in new[] { -1, 1 })
        {
            for (int i = -most; i <= most; i++)
            {
                double y = (i + 0.5) * step;
                yield return new(
                    BraceKind.Fan,
                    new(FromU, y - (side * run / 2)),
                    new(TailU, y + (side * run / 2))
                );
            }
        }
    }
}

using Formwright.Curves;

namespace Formwright.Trace.Comparing;

/// <summary>Two outlines beside each other, heels and centrelines on each other. Figures are the second's over the first's.</summary>
/// <param name="LargestMm">Largest distance from either to the other, mm.</param>
/// <param name="LargestAtUMm">Station of that place, mm.</param>
/// <param name="RmsMm">Root mean square distance of even places of both from the other, mm.</param>
/// <param name="AreaMm2">Area of the first, mm².</param>
/// <param name="OtherAreaMm2">Area of the second, mm².</param>
/// <param name="Widths">Widths side by side.</param>
/// <param name="Change">How far their relative curvature plots differ: their character.</param>
public sealed record OutlineComparison(
    double LargestMm,
    double LargestAtUMm,
    double RmsMm,
    double AreaMm2,
    double OtherAreaMm2,
    IReadOnlyList<WidthPair> Widths,
    PlotChange Change
)
{
    private const int Samples = 400;

    /// <summary>By how much the second's area is larger, mm².</summary>
    public double AreaDifferenceMm2 => OtherAreaMm2 - AreaMm2;

    /// <summary>Compares two outlines.</summary>
    /// <param name="first">The one that is compared with.</param>
    /// <param name="second">The other.</param>
    /// <param name="stepMm">Step of the table of widths, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not a number above 0.</exception>
    public static OutlineComparison Of(Outline first, Outline second, double stepMm = 20)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (!(double.IsFinite(stepMm) && stepMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(stepMm), stepMm, "A step is above 0.");
        }

        double largest = 0;
        double at = 0;
        double sum = 0;
        foreach (
            (Outline from, Outline to) in ((Outline, Outline)[])[(first, second), (second, first)]
        )
        {
            for (int i = 0; i <= Samples; i++)
            {
                Point place = from.Half.At(from.HalfPerimeterMm * i / Samples).Position;
                double distance = to.Half.Nearest(place).DistanceMm;
                sum += distance * distance;
                if (distance > largest)
                {
                    (largest, at) = (distance, place.X);
                }
            }
        }

        List<WidthPair> widths = [];
        double length = Math.Max(first.BodyLengthMm, second.BodyLengthMm);
        for (int i = 1; i * stepMm < length && i < 10_000; i++)
        {
            double u = i * stepMm;
            widths.Add(new WidthPair(u, first.WidthAt(u), second.WidthAt(u)));
        }

        return new OutlineComparison(
            largest,
            at,
            Math.Sqrt(sum / (2 * (Samples + 1))),
            first.AreaMm2,
            second.AreaMm2,
            widths,
            PlotChange.Between(first, second)
        );
    }
}

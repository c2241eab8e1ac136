namespace Formwright.Drawing;

/// <summary>An axis of a <see cref="Plot"/>.</summary>
/// <param name="Label">What is read on it, with its unit.</param>
/// <param name="From">Value at its left or lower end.</param>
/// <param name="To">Value at its right or upper end.</param>
public sealed record PlotAxis(string Label, double From, double To)
{
    /// <summary>Decimals of the figures at its ticks; null takes what the step needs.</summary>
    public int? Decimals { get; init; }

    /// <summary>An axis that holds some values, its ends on round figures.</summary>
    /// <exception cref="ArgumentException">A value is not finite, or there is none.</exception>
    public static PlotAxis Around(string label, IEnumerable<double> values)
    {
        double[] all = [.. values];
        if (all.Length == 0 || !all.All(double.IsFinite))
        {
            throw new ArgumentException("An axis needs finite values.", nameof(values));
        }

        double low = all.Min();
        double high = all.Max();
        double room = high > low ? 0 : Math.Max(1, Math.Abs(low)) / 2;
        double step = StepOf(low - room, high + room);
        return new PlotAxis(
            label,
            Math.Floor((low - room) / step) * step,
            Math.Ceiling((high + room) / step) * step
        );
    }

    /// <summary>Distance of its ticks: 1, 2 or 5 times a power of ten, four to nine of them.</summary>
    public double Step => StepOf(From, To);

    /// <summary>Values at its ticks.</summary>
    public IReadOnlyList<double> Ticks()
    {
        double step = Step;
        double first = Math.Ceiling((From / step) - 1e-9);
        double last = Math.Floor((To / step) + 1e-9);
        return [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step)];
    }

    /// <summary>The figure at a tick.</summary>
    public string Figure(double value) =>
        Figures.Fixed(value, Decimals ?? Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9)));

    /// <summary>Share of the axis at which a value lies, 0 to 1.</summary>
    internal double ShareOf(double value) => (value - From) / (To - From);

    private static double StepOf(double from, double to)
    {
        double raw = (to - from) / 5;
        double power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double times = raw / power;
        return power
            * (
                times < 1.5 ? 1
                : times < 3.5 ? 2
                : times < 7.5 ? 5
                : 10
            );
    }
}

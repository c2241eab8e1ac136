using System.Runtime.CompilerServices;

namespace Formwright.Curves;

/// <summary>Checks at the entries: what only a mistake in the calling code can bring. Each gives the value back, or throws ArgumentOutOfRangeException.</summary>
public static class Guard
{
    /// <summary>Neither infinite nor NaN.</summary>
    public static double Finite(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) => double.IsFinite(value) ? value : throw Needed(name, value, "A finite number");

    /// <summary>Finite and above 0.</summary>
    public static double Positive(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw Needed(name, value, "A finite number above 0");

    /// <summary>Finite and 0 or more.</summary>
    public static double NotNegative(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value >= 0
            ? value
            : throw Needed(name, value, "A finite number of 0 or more");

    /// <summary>Within the two ends, which belong to it.</summary>
    public static double Between(
        double value,
        double min,
        double max,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        value >= min && value <= max
            ? value
            : throw Needed(name, value, $"A number from {min} to {max}");

    /// <summary>Both of its coordinates finite.</summary>
    public static Point Finite(
        Point value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) => value.IsFinite ? value : throw Needed(name, value, "A finite place");

    private static ArgumentOutOfRangeException Needed(string? name, object value, string what) =>
        new(name, value, $"{what} is needed.");
}

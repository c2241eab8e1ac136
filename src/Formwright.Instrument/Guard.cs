using System.Runtime.CompilerServices;

namespace Formwright.Instrument;

/// <summary>Checks at the entries: what only a mistake in the calling code can bring.</summary>
internal static class Guard
{
    internal static double Finite(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A finite number is needed.");

    internal static double Positive(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                "A finite number above 0 is needed."
            );

    internal static double Between(
        double value,
        double min,
        double max,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                $"A number from {min} to {max} is needed."
            );
}

using System.Runtime.CompilerServices;

namespace Formwright.Fields.Plates;

/// <summary>Checks at the entries: what only a mistake in the calling code can bring.</summary>
internal static class Check
{
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

    internal static double NotNegative(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value) && value >= 0
            ? value
            : throw new ArgumentOutOfRangeException(
                name,
                value,
                "A finite number of 0 or more is needed."
            );

    internal static double Finite(
        double value,
        [CallerArgumentExpression(nameof(value))] string? name = null
    ) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A finite number is needed.");
}

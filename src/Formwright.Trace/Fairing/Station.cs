using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>The mean of the traced points over a short length of one half.</summary>
/// <param name="Place">Their mean place across the curve.</param>
/// <param name="Count">How many they were.</param>
/// <param name="IsBump">They lie on a bump and do not hold the fair curve.</param>
internal readonly record struct Station(Point Place, int Count, bool IsBump);

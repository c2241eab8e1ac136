namespace Formwright.Jigs.Brackets;

/// <summary>A rib as the covering sees it.</summary>
/// <param name="FromMm">Where it leaves the heel's block, mm.</param>
/// <param name="ToMm">Where it meets the tail block, mm.</param>
/// <param name="Places">Every contact that any bracket could make, from heel to tail.</param>
/// <param name="StepMm">Greatest distance between two such places, mm.</param>
public sealed record CoverRib(
    double FromMm,
    double ToMm,
    IReadOnlyList<CoverContact> Places,
    double StepMm
)
{
    /// <summary>
    /// For a largest gap: how far the rib must be held so that 0, 1, 2 … more contacts can hold the rest, wherever they are set. The list ends with the
    /// count that can hold all of it; a rib that can't be held ends at <paramref name="most"/>. Places between those listed are allowed for by
    /// one step, so the count is a lower bound for any slots.
    /// </summary>
    public IReadOnlyList<double> Held(double gapMm, int most)
    {
        List<double> held = [ToMm - gapMm];
        while (held[^1] > FromMm && held.Count <= most)
        {
            double next = double.PositiveInfinity;
            foreach (CoverContact place in Places)
            {
                if (place.LeaveMm + StepMm >= held[^1])
                {
                    next = Math.Min(next, place.EnterMm - StepMm);
                }
            }

            held.Add(Math.Min(held[^1], next - gapMm));
        }

        return held;
    }
}

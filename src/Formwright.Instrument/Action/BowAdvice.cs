namespace Formwright.Instrument.Action;

/// <summary>The bow between nut and join, and what to plane.</summary>
/// <param name="BendingMm">Bow that the strings' pull gives, at its deepest, creep included, mm.</param>
/// <param name="PlanedMm">Hollow planed in, mm.</param>
/// <param name="StrungMm">Both together, mm.</param>
/// <param name="WantedMm">What the maker wants to see when strung, mm.</param>
public sealed record BowAdvice(double BendingMm, double PlanedMm, double StrungMm, double WantedMm)
{
    /// <summary>Hollow to plane into the fingerboard in all, mm; negative is a crown to leave.</summary>
    public double ToPlaneMm => WantedMm - BendingMm;
}

namespace Formwright.Curves;

/// <summary>The place of a chain that is nearest to another place.</summary>
/// <param name="Foot">The nearest place on the chain.</param>
/// <param name="DistanceMm">Distance from it, mm, never negative.</param>
/// <param name="IsLeft">The queried place is to the left of the chain's direction there.</param>
public readonly record struct NearestPoint(ChainPoint Foot, double DistanceMm, bool IsLeft)
{
    /// <summary>Distance, mm, positive to the left of the chain.</summary>
    public double SignedDistanceMm => IsLeft ? DistanceMm : -DistanceMm;
}

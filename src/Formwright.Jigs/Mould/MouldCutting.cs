namespace Formwright.Jigs.Mould;

/// <summary>How the layers are brought to the line with a template.</summary>
/// <param name="RoughMm">Wood left outside the line when a layer is roughed out, mm.</param>
/// <param name="CutterRadiusMm">Radius of the bearing cutter, mm.</param>
/// <param name="TightestHollowMm">Smallest radius of the inner face where it is hollow (a bout), mm: no cutter of a larger radius reaches the line.</param>
/// <param name="TightestAtMm">Its station from the heel, mm.</param>
/// <param name="RebateBearingMm">Diameter of the bearing that lets the cutter in by the rebate's width, mm; null where the cutter is too small for it.</param>
public sealed record MouldCutting(
    double RoughMm,
    double CutterRadiusMm,
    double TightestHollowMm,
    double TightestAtMm,
    double? RebateBearingMm
)
{
    /// <summary>Smallest bearing in trade for such cutters, mm: common practice.</summary>
    public const double LeastBearingMm = 6;
}

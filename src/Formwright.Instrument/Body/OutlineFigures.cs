using Formwright.Curves;

namespace Formwright.Instrument.Body;

/// <summary>What follows from an outline.</summary>
/// <param name="HalfPerimeterMm">Length of half the outline from heel to tail, mm.</param>
/// <param name="AreaMm2">Area of the whole outline, mm².</param>
/// <param name="CentroidUMm">Station of the area's centroid, mm.</param>
/// <param name="CurvaturePieces">Monotone runs of curvature on half the outline: fewer is fairer.</param>
/// <param name="TightestBoutMm">Smallest radius where the outline is round outwards, mm: the tightest hollow of the mould.</param>
/// <param name="TightestWaistMm">Smallest radius where it is hollow, mm.</param>
/// <param name="Table">Widths and curvatures every 10 mm.</param>
public sealed record OutlineFigures(
    double HalfPerimeterMm,
    double AreaMm2,
    double CentroidUMm,
    int CurvaturePieces,
    double TightestBoutMm,
    double TightestWaistMm,
    IReadOnlyList<OutlineRow> Table
)
{
    /// <summary>Smallest radius anywhere, mm.</summary>
    public double TightestRadiusMm => Math.Min(TightestBoutMm, TightestWaistMm);

    /// <summary>The figures of an outline.</summary>
    public static OutlineFigures Of(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return new(
            outline.HalfPerimeterMm,
            outline.AreaMm2,
            outline.CentroidUMm,
            outline.Half.CurvaturePieces().Count,
            outline.Half.TightestRight?.Curve.RadiusMm ?? double.PositiveInfinity,
            outline.Half.TightestLeft?.Curve.RadiusMm ?? double.PositiveInfinity,
            outline.Table()
        );
    }
}

using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A bent state of a plate: a deflection in mm, or a mode without scale.</summary>
public sealed class PlateShape
{
    private readonly PlateModel model;
    private readonly double[] unknowns;

    internal PlateShape(PlateModel model, double[] unknowns)
    {
        this.model = model;
        this.unknowns = unknowns;
        Rises = new double[model.Mesh.Points.Length];
        for (int v = 0; v < Rises.Length; v++)
        {
            int number = model.Unknowns.RiseAt(v);
            Rises[v] = number < 0 ? 0 : unknowns[number];
        }
    }

    /// <summary>Rise at each vertex of the model's mesh.</summary>
    public double[] Rises { get; }

    internal ReadOnlySpan<double> Unknowns => unknowns;

    /// <summary>Rise at a place; null outside the plate.</summary>
    public double? RiseAt(Point place) => At(place)?.RiseMm;

    /// <summary>Rise, slopes and in-plane movement at a place; null outside the plate.</summary>
    public PlateMotion? At(Point place) =>
        model.Locate(place) is (int element, int part)
            ? model.MotionAt(element, new(part, place, 1), unknowns)
            : null;

    /// <summary>Mean rise, slopes and in-plane movement of a spot.</summary>
    /// <exception cref="ArgumentException">The spot lies off the plate.</exception>
    public PlateMotion Mean(PlateSpot spot)
    {
        ArgumentNullException.ThrowIfNull(spot);
        var sum = new PlateMotion();
        double area = 0;
        foreach ((int element, ElementPoint point) in model.PointsOf(spot))
        {
            PlateMotion own = model.MotionAt(element, point, unknowns);
            area += point.Weight;
            sum = new(
                sum.RiseMm + (own.RiseMm * point.Weight),
                sum.SlopeRad + (own.SlopeRad * point.Weight),
                sum.ShiftMm + (own.ShiftMm * point.Weight)
            );
        }

        return new(sum.RiseMm / area, sum.SlopeRad * (1 / area), sum.ShiftMm * (1 / area));
    }
}

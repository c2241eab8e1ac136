using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>A bent state of a plate: a deflection in mm, or a mode without scale. Curvatures jump a little from triangle to triangle.</summary>
public sealed class PlateShape : IHeightField
{
    private readonly PlateModel model;
    private readonly double[] unknowns;

    internal PlateShape(PlateModel model, double[] unknowns)
    {
        this.model = model;
        this.unknowns = unknowns;
        double[] rises = new double[model.Mesh.Points.Length];
        int highest = 0;
        for (int v = 0; v < rises.Length; v++)
        {
            int number = model.Unknowns.RiseAt(v);
            rises[v] = number < 0 ? 0 : unknowns[number];
            highest = rises[v] > rises[highest] ? v : highest;
        }

        Rises = rises;
        Peak = new(model.Mesh.Points[highest], rises[highest]);
    }

    /// <summary>Rise at each vertex of the model's mesh.</summary>
    public IReadOnlyList<double> Rises { get; }

    public Region Region => model.Region;

    /// <summary>The vertex of the mesh that rises most.</summary>
    public HeightPeak Peak { get; }

    public double HeightAt(Point place) => At(place).HeightMm;

    public HeightSample At(Point place) =>
        model.Locate(place) is (int element, int part)
            ? model.SampleAt(element, part, place, unknowns)
            : default;

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

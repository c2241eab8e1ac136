using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>The membrane over a region, -∇²u = 1 with u = 0 on the edge, as solved on one grid, and how well.</summary>
public sealed class MembraneSolution
{
    private const int EdgePlaces = 500;

    /// <summary>Share of max u by which the polyline's sagitta moves the field.</summary>
    private readonly double edgeError;

    internal MembraneSolution(Region region, Multigrid solver, double residual)
    {
        MembraneGrid grid = solver.Finest;
        Region = region;
        StepMm = grid.StepMm;
        Unknowns = grid.Unknowns;
        Cycles = solver.Cycles;
        Residual = residual;
        Field = new HeightField(region, EdgeExtension.Extended(grid, grid.U));
        foreach (MembraneGrid.Span span in grid.Spans)
        {
            foreach (double u in grid.U.AsSpan(span.From, span.To - span.From))
            {
                Integral += u;
            }
        }
        Integral *= StepMm * StepMm;
        RelativeError = GridError(Field, grid, solver);
        edgeError = region.SagittaMm * SteepestEdge() / Field.Peak.HeightMm;
    }

    public Region Region { get; }

    /// <summary>u over the region. It is an area: read its height as mm², its slope as mm, its curvatures as plain numbers.</summary>
    public HeightField Field { get; }

    public double StepMm { get; }

    /// <summary>Nodes inside the region.</summary>
    public int Unknowns { get; }

    /// <summary>Cycles spent on the finest grid.</summary>
    public int Cycles { get; }

    /// <summary>Largest amount by which -∇²u = 1 is missed at a node.</summary>
    public double Residual { get; }

    /// <summary>Whether <see cref="Residual"/> came below <see cref="Membrane.ResidualTolerance"/>.</summary>
    public bool Converged => Residual <= Membrane.ResidualTolerance;

    /// <summary>∫u over the region, mm⁴, by the trapezoid rule over the nodes: second order in the step.</summary>
    public double Integral { get; }

    /// <summary>Estimated error of u / max u anywhere, from the difference to the next coarser grid; infinite where there is none.</summary>
    public double RelativeError { get; }

    /// <summary>
    /// Estimated error, mm, of a dome (see <see cref="Dome"/>) on this solution: what the grid leaves, and what the
    /// polyline in the place of a curved edge leaves.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not finite or out of its range.</exception>
    public double EstimatedErrorMm(double heightMm, double exponent = 1)
    {
        Dome.CheckShape(heightMm, exponent);
        return GridErrorMm(heightMm, exponent) + EdgeErrorMm(heightMm, exponent);
    }

    /// <summary>The grid's part of <see cref="EstimatedErrorMm"/>: (u / max u)^p is p times as sensitive as u.</summary>
    internal double GridErrorMm(double heightMm, double exponent) =>
        heightMm > 0 ? heightMm * exponent * RelativeError : 0;

    /// <summary>The polyline's part of <see cref="EstimatedErrorMm"/>.</summary>
    internal double EdgeErrorMm(double heightMm, double exponent) =>
        heightMm * exponent * edgeError;

    /// <summary>Largest slope of u on the edge, where it is steepest.</summary>
    private double SteepestEdge()
    {
        double steepest = 0;
        foreach (IReadOnlyList<Point> loop in Region.Loops)
        {
            int stride = Math.Max(loop.Count / EdgePlaces, 1);
            for (int i = 0; i < loop.Count; i += stride)
            {
                steepest = Math.Max(steepest, Field.Spline(loop[i]).Slope.Length);
            }
        }
        return steepest;
    }

    /// <summary>
    /// The difference to the field of twice the step, looked at in every node, so that what the spline and the edge leave
    /// between nodes is seen too. That is the error of the coarser field; this one's is about a third of it (Richardson 1911),
    /// and the rest is margin for corners, where the order falls.
    /// </summary>
    private static double GridError(HeightField fine, MembraneGrid grid, Multigrid solver)
    {
        if (solver.Coarser is not { Unknowns: > 0 } coarser)
        {
            return double.PositiveInfinity;
        }
        var coarse = new HeightField(
            fine.Region,
            EdgeExtension.Extended(coarser, solver.CoarserAnswer)
        );
        double perFine = 1 / fine.Peak.HeightMm;
        double perCoarse = 1 / coarse.Peak.HeightMm;
        double largest = 0;
        foreach (MembraneGrid.Span span in grid.Spans)
        {
            double y = (grid.FirstY + span.Row) * grid.StepMm;
            for (int i = span.From; i < span.To; i++)
            {
                double x = (grid.FirstX + i - (span.Row * grid.Columns)) * grid.StepMm;
                double difference =
                    (grid.U[i] * perFine) - (coarse.Spline(new(x, y)).HeightMm * perCoarse);
                largest = Math.Max(largest, Math.Abs(difference));
            }
        }
        return largest;
    }
}

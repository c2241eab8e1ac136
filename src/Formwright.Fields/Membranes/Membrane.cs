using Formwright.Curves;

namespace Formwright.Fields;

/// <summary>
/// The shape that an evenly loaded membrane takes over a region: -∇²u = 1 inside, u = 0 on the edge.
/// </summary>
/// <remarks>
/// Five-point differences with true distances to the edge (Shortley &amp; Weller 1938), second order in the step up to
/// the edge; multigrid; at a corner of the region wider than a right angle and up to straight the error falls a little slower,
/// at a re-entrant corner clearly slower. The same region and step give the same bytes on every run and machine.
/// </remarks>
public static class Membrane
{
    /// <summary>Largest number of grid nodes that is accepted, some 200 MB (tuned).</summary>
    public const int MostNodes = 1 << 22;

    /// <summary>Cycles after which the solver gives up and says so.</summary>
    public const int MostCycles = 60;

    /// <summary>Residual at which the solver stops: then u is within 1e-7 of itself of the exact grid solution.</summary>
    /// <remarks>By the maximum principle of the equations a residual r moves u by no more than the share r.</remarks>
    public const double ResidualTolerance = 1e-7;

    // Derived: so far out a place is still known to 1e-9 of a step.
    private const int MostStepsFromOrigin = 1 << 21;

    // Tuned: on a guitar's body this step already keeps a dome of 3 mm within 0.005 mm.
    private const int CoarsestStepsAcross = 24;

    /// <summary>Solves on a grid of a given step.</summary>
    /// <param name="region">The region, mm.</param>
    /// <param name="stepMm">Step of the grid, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The step is not positive, so fine that the grid exceeds <see cref="MostNodes"/>, or so coarse that no node lies inside.
    /// </exception>
    public static MembraneSolution Solve(Region region, double stepMm)
    {
        ArgumentNullException.ThrowIfNull(region);
        if (!(double.IsFinite(stepMm) && stepMm > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(stepMm),
                stepMm,
                "A step above 0 is needed."
            );
        }
        Box bounds = region.Bounds;
        if (
            ((bounds.WidthMm / stepMm) + 4) * ((bounds.HeightMm / stepMm) + 4) > MostNodes
            || FarthestMm(bounds) > MostStepsFromOrigin * stepMm
        )
        {
            throw new ArgumentOutOfRangeException(
                nameof(stepMm),
                stepMm,
                FormattableString.Invariant(
                    $"The grid would have more than {MostNodes} nodes, or reach more than {MostStepsFromOrigin} steps from the origin."
                )
            );
        }
        var solver = new Multigrid(region, stepMm);
        if (solver.Finest.Unknowns == 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(stepMm),
                stepMm,
                "No node of the grid lies inside the region."
            );
        }
        double residual = solver.Solve(ResidualTolerance, MostCycles);
        return new(region, solver, residual);
    }

    /// <summary>Solves on the coarsest grid whose estimated error is small enough for a dome of a given height.</summary>
    /// <param name="region">The region, mm.</param>
    /// <param name="heightMm">Height of the dome, mm.</param>
    /// <param name="toleranceMm">Error that is allowed, mm.</param>
    /// <param name="exponent">Exponent of the dome.</param>
    /// <returns>
    /// The solution; compare <see cref="MembraneSolution.EstimatedErrorMm"/> with the tolerance: where the grid can't be
    /// refined further, it may be larger.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A figure is not finite or out of its range, or the region is so thin for its length that a grid over it exceeds <see cref="MostNodes"/>.
    /// </exception>
    public static MembraneSolution SolveWithin(
        Region region,
        double heightMm,
        double toleranceMm,
        double exponent = 1
    )
    {
        ArgumentNullException.ThrowIfNull(region);
        Dome.CheckShape(heightMm, exponent);
        if (!(double.IsFinite(toleranceMm) && toleranceMm > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(toleranceMm),
                toleranceMm,
                "A tolerance above 0 is needed."
            );
        }
        Box bounds = region.Bounds;
        // Area over perimeter is half the width of a strip: a thin region that lies aslant gets its nodes too.
        double step = Math.Min(
            Math.Min(bounds.WidthMm, bounds.HeightMm) / CoarsestStepsAcross,
            region.AreaMm2 / region.PerimeterMm / 2
        );
        MembraneSolution best = Solve(region, step);
        // What the polyline at the edge costs no finer grid brings back: at least half the tolerance is the grid's.
        while (
            best.GridErrorMm(heightMm, exponent)
                > Math.Max(toleranceMm - best.EdgeErrorMm(heightMm, exponent), toleranceMm / 2)
            && bounds.WidthMm * bounds.HeightMm < best.StepMm * best.StepMm * MostNodes / 8
        )
        {
            best = Solve(region, best.StepMm / 2);
        }
        return best;
    }

    private static double FarthestMm(Box bounds) =>
        Math.Max(Math.Max(-bounds.Min.X, bounds.Max.X), Math.Max(-bounds.Min.Y, bounds.Max.Y));
}

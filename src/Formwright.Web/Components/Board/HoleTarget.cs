using Formwright.Curves;

namespace Formwright.Web.Components.Board;

/// <summary>A hole on a drawn view.</summary>
/// <param name="Centre">Its middle in the part's own frame, mm.</param>
/// <param name="DiameterMm">Its diameter, mm.</param>
/// <param name="At">Where it stands in the picture.</param>
/// <param name="Radius">How large it is there; 0 where a cross marks it.</param>
internal sealed record HoleTarget(Point Centre, double DiameterMm, Point At, double Radius)
{
    // A fingertip needs 40 pixels; on the screen 96 of them are an inch.
    private const double Fingertip = 20.5 * 25.4 / 96;

    // What lights up around a small hole.
    private const double LeastRing = 3;

    /// <summary>Radius of what lights up.</summary>
    public double Ring => Math.Max(Radius, LeastRing);

    /// <summary>Radius of what a hand may touch: a fingertip, unless it would reach into that of a neighbour.</summary>
    /// <param name="all">All of the picture.</param>
    /// <param name="scale">How much smaller than drawn it is shown.</param>
    public double Reach(IReadOnlyList<HoleTarget> all, double scale)
    {
        ArgumentNullException.ThrowIfNull(all);
        double near = all.Select(each => each.At.DistanceTo(At))
            .Where(far => far > 1e-6)
            .DefaultIfEmpty(double.MaxValue)
            .Min();
        return Math.Max(Radius, Math.Min(Fingertip / scale, near / 2));
    }
}

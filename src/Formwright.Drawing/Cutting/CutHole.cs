using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A hole to drill.</summary>
public sealed record CutHole
{
    /// <param name="centre">Centre, part mm.</param>
    /// <param name="diameterMm">Diameter.</param>
    /// <param name="depthMm">Depth from the upper face; null for right through.</param>
    /// <exception cref="ArgumentException">A figure that is not finite and positive.</exception>
    public CutHole(Point centre, double diameterMm, double? depthMm = null)
    {
        if (!centre.IsFinite)
        {
            throw new ArgumentException("The centre is not a finite point.", nameof(centre));
        }

        if (!(diameterMm > 0 && double.IsFinite(diameterMm)))
        {
            throw new ArgumentOutOfRangeException(nameof(diameterMm));
        }

        if (depthMm is { } depth && !(depth > 0 && double.IsFinite(depth)))
        {
            throw new ArgumentOutOfRangeException(nameof(depthMm));
        }

        Centre = centre;
        DiameterMm = diameterMm;
        DepthMm = depthMm;
    }

    public Point Centre { get; }

    public double DiameterMm { get; }

    public double? DepthMm { get; }
}

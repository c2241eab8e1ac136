using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>One of <c>[[rosette.rings]]</c>: a channel between two radii about the soundhole's centre.</summary>
/// <param name="InnerMm">Inner radius, mm.</param>
/// <param name="OuterMm">Outer radius, mm.</param>
/// <param name="DepthMm">Depth, mm.</param>
public sealed record RosetteRingDesign(double InnerMm, double OuterMm, double DepthMm)
{
    internal static RosetteRingDesign Read(TableReader table)
    {
        RosetteRingDesign ring = new(
            table.Length("inner", null, 5, 250),
            table.Length("outer", null, 5, 250),
            table.Length("depth", 1.4, 0.2, 6)
        );
        if (ring.OuterMm <= ring.InnerMm)
        {
            table.Fault("outer", DesignWords.Of["diagnostic.ring"]);
        }

        return ring;
    }
}

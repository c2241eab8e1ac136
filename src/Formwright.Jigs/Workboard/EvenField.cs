using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Jigs.Workboard;

/// <summary>The same depth everywhere in the region of another field.</summary>
internal sealed class EvenField(IHeightField over, double depthMm) : IHeightField
{
    public Region Region => over.Region;

    public HeightPeak Peak => over.Peak with { HeightMm = depthMm };

    public double HeightAt(Point place) => Region.Contains(place) ? depthMm : 0;

    public HeightSample At(Point place) => new(HeightAt(place), new Vector(0, 0), 0, 0, 0);
}

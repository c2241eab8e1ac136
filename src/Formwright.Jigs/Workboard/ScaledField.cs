using Formwright.Curves;
using Formwright.Fields;

namespace Formwright.Jigs.Workboard;

/// <summary>A height field times a factor.</summary>
internal sealed class ScaledField(IHeightField source, double factor) : IHeightField
{
    public Region Region => source.Region;

    public HeightPeak Peak => source.Peak with { HeightMm = source.Peak.HeightMm * factor };

    public double HeightAt(Point place) => source.HeightAt(place) * factor;

    public HeightSample At(Point place)
    {
        HeightSample at = source.At(place);
        return new HeightSample(
            at.HeightMm * factor,
            at.Slope * factor,
            at.Zxx * factor,
            at.Zxy * factor,
            at.Zyy * factor
        );
    }
}

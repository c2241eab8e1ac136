using Formwright.Curves;
using Formwright.Design.Sections;
using Formwright.Fields;

namespace Formwright.Instrument.Body.Back;

/// <summary>
/// The inner face of the back as a depth under the soundboard's inner face at the rim, body frame. Two circles, no small-angle forms: along the
/// centreline the arc of the long radius through the depths at heel and tail, bulging out; across it minus the arc of the cross radius;
/// or a sphere whose section along the centreline is that same arc.
/// </summary>
public sealed class BackField : IHeightField
{
    private readonly double bodyMm;
    private readonly double heelMm;
    private readonly double tailMm;
    private readonly bool isSphere;
    private readonly double alongMm;
    private readonly double acrossMm;
    private readonly double centreX;
    private readonly double centreZ;

    /// <param name="design">Depths and radii, as checked when they were read.</param>
    /// <param name="bodyMm">Length of the body, mm.</param>
    /// <param name="region">The whole outline.</param>
    public BackField(BackDesign design, double bodyMm, Region region)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(region);
        Region = region;
        this.bodyMm = Guard.Positive(bodyMm);
        heelMm = Guard.Positive(design.DepthHeelMm);
        tailMm = Guard.Positive(design.DepthTailMm);
        isSphere = design.Kind == BackKind.Sphere;
        alongMm = design.LongRadiusMm;
        acrossMm = isSphere ? alongMm : design.CrossRadiusMm;
        double fall = tailMm - heelMm;
        double chord = Math.Sqrt((bodyMm * bodyMm) + (fall * fall));
        if ((alongMm > 0 || isSphere) && alongMm <= chord / 2)
        {
            throw new ArgumentOutOfRangeException(
                nameof(design),
                alongMm,
                "The arch does not reach from end to end."
            );
        }

        // Centre of the circle through both ends, on the soundboard's side.
        double back = Math.Sqrt(Math.Max(0, (alongMm * alongMm) - (chord * chord / 4)));
        centreX = (bodyMm / 2) + (back * fall / chord);
        centreZ = ((heelMm + tailMm) / 2) - (back * bodyMm / chord);
        Peak = new(new Point(DeepestX(), 0), HeightAt(new Point(DeepestX(), 0)));
    }

    public Region Region { get; }

    public HeightPeak Peak { get; }

    /// <summary>Depth at a place, also a little outside the outline.</summary>
    public double HeightAt(Point place) => At(place).HeightMm;

    public HeightSample At(Point place)
    {
        if (isSphere)
        {
            return Domes.Jet.Sphere(place, centreX, alongMm, centreZ);
        }

        double z = heelMm + ((tailMm - heelMm) * place.X / bodyMm);
        double zx = (tailMm - heelMm) / bodyMm;
        double zxx = 0;
        if (alongMm > 0)
        {
            double x = place.X - centreX;
            double q = Math.Sqrt(Math.Max((alongMm * alongMm) - (x * x), 1e-12));
            (z, zx, zxx) = (centreZ + q, -x / q, -alongMm * alongMm / (q * q * q));
        }

        if (acrossMm == 0)
        {
            return new HeightSample(z, new Vector(zx, 0), zxx, 0, 0);
        }

        double y = place.Y;
        double p = Math.Sqrt(Math.Max((acrossMm * acrossMm) - (y * y), 1e-12));
        return new HeightSample(
            // R - √(R² - y²) without loss of digits.
            z - (y * y / (acrossMm + p)),
            new Vector(zx, -y / p),
            zxx,
            0,
            -acrossMm * acrossMm / (p * p * p)
        );
    }

    private double DeepestX()
    {
        double straight = tailMm > heelMm ? bodyMm : 0;
        return alongMm > 0 ? Math.Clamp(centreX, 0, bodyMm) : straight;
    }
}

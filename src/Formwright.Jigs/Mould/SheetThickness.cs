namespace Formwright.Jigs.Mould;

/// <summary>How far the thickness of a sanded plywood sheet may be from its nominal one: EN 315:2000, +(0.2 + 0.03 t), -(0.4 + 0.03 t), mm.</summary>
public static class SheetThickness
{
    /// <summary>Thinnest sheet that is sold as <paramref name="nominalMm"/>, mm.</summary>
    public static double LeastMm(double nominalMm) => nominalMm - 0.4 - (0.03 * nominalMm);

    /// <summary>Thickest sheet that is sold as <paramref name="nominalMm"/>, mm.</summary>
    public static double MostMm(double nominalMm) => nominalMm + 0.2 + (0.03 * nominalMm);
}

namespace Formwright.Curves;

/// <summary>
/// How much two outlines differ in character: their relative curvature plots (curvature times half perimeter, over the share of the half
/// perimeter), which are the same for outlines of the same shape whatever their size.
/// </summary>
/// <param name="RmsShare">Root mean square difference, as a share of the first plot's own root mean square.</param>
/// <param name="LargestShare">Largest difference, as such a share.</param>
public readonly record struct PlotChange(double RmsShare, double LargestShare)
{
    private const int Samples = 400;

    /// <summary>From one outline to another.</summary>
    public static PlotChange Between(Outline from, Outline to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        double own = 0;
        double sum = 0;
        double largest = 0;
        for (int i = 0; i <= Samples; i++)
        {
            double share = (double)i / Samples;
            double before =
                from.Half.At(share * from.HalfPerimeterMm).Curvature * from.HalfPerimeterMm;
            double after = to.Half.At(share * to.HalfPerimeterMm).Curvature * to.HalfPerimeterMm;
            own += before * before;
            sum += (after - before) * (after - before);
            largest = Math.Max(largest, Math.Abs(after - before));
        }

        double size = Math.Sqrt(own / (Samples + 1));
        return new PlotChange(Math.Sqrt(sum / (Samples + 1)) / size, largest / size);
    }
}

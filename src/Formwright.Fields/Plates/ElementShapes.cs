namespace Formwright.Fields.Plates;

/// <summary>What an element's shapes are at one place: the rise with its derivatives by the bending unknowns, the in-plane shapes by nodes.</summary>
internal sealed class ElementShapes
{
    internal const int Stride = PlateElement.Bending;

    internal double[] Rise { get; } = new double[6 * Stride];

    internal double[] Shift { get; } = new double[6];

    internal double[] ShiftX { get; } = new double[6];

    internal double[] ShiftY { get; } = new double[6];

    internal ReadOnlySpan<double> W => Rise.AsSpan(0, Stride);

    internal ReadOnlySpan<double> Wx => Rise.AsSpan(Stride, Stride);

    internal ReadOnlySpan<double> Wy => Rise.AsSpan(2 * Stride, Stride);

    internal ReadOnlySpan<double> Wxx => Rise.AsSpan(3 * Stride, Stride);

    internal ReadOnlySpan<double> Wyy => Rise.AsSpan(4 * Stride, Stride);

    internal ReadOnlySpan<double> Wxy => Rise.AsSpan(5 * Stride, Stride);
}

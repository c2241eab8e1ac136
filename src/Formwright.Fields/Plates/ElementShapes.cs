namespace Formwright.Fields.Plates;

/// <summary>What an element's shapes are at one place: the rise with its derivatives by the bending unknowns, the in-plane shapes by nodes.</summary>
internal sealed class ElementShapes
{
    private const int N = PlateElement.Bending;

    private readonly double[] rise = new double[6 * N];
    private readonly double[] shift = new double[21];

    internal Span<double> W => rise.AsSpan(0, N);

    /// <summary>By x and by y.</summary>
    internal Span<double> Slopes => rise.AsSpan(N, 2 * N);

    internal ReadOnlySpan<double> Wx => rise.AsSpan(N, N);

    internal ReadOnlySpan<double> Wy => rise.AsSpan(2 * N, N);

    /// <summary>By xx, yy and xy.</summary>
    internal Span<double> Curvatures => rise.AsSpan(3 * N, 3 * N);

    internal ReadOnlySpan<double> Wxx => rise.AsSpan(3 * N, N);

    internal ReadOnlySpan<double> Wyy => rise.AsSpan(4 * N, N);

    internal ReadOnlySpan<double> Wxy => rise.AsSpan(5 * N, N);

    internal Span<double> Shift => shift.AsSpan(0, 6);

    internal Span<double> ShiftX => shift.AsSpan(6, 6);

    internal Span<double> ShiftY => shift.AsSpan(12, 6);

    internal Span<double> Bary => shift.AsSpan(18, 3);
}

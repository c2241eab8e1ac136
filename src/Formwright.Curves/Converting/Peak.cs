namespace Formwright.Curves.Converting;

/// <summary>Largest size of a smooth function that vanishes at 0 and 1.</summary>
internal static class Peak
{
    /// <summary>Sampled between the ends, then the top of the parabola through the largest sample and its neighbours.</summary>
    internal static double Of(int samples, Func<double, double> function)
    {
        Span<double> sizes = stackalloc double[samples + 2];
        int top = 1;
        for (int i = 1; i <= samples; i++)
        {
            sizes[i] = function((double)i / (samples + 1));
            top = Math.Abs(sizes[i]) > Math.Abs(sizes[top]) ? i : top;
        }

        double sign = Math.Sign(sizes[top]);
        double left = sign * sizes[top - 1];
        double right = sign * sizes[top + 1];
        double middle = sign * sizes[top];
        double bend = (2 * middle) - left - right;
        return bend > 0 ? middle + ((right - left) * (right - left) / (8 * bend)) : middle;
    }
}

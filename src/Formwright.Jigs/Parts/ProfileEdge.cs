using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>
/// Edge of a part that is seen from the side: a straight edge at one depth and a curve of depths across. Its x is the depth below the face that the
/// part stands on, so that up on a page is up.
/// </summary>
internal static class ProfileEdge
{
    private const double StepMm = 2;

    /// <summary>The closed edge, from -half to half; its error is that of the chords.</summary>
    public static ArcPath Of(double half, double straight, Func<double, double> depth)
    {
        int steps = Math.Max(2, (int)Math.Ceiling(2 * half / StepMm));
        ContourBuilder edge = new();
        edge.LineTo(new Point(straight, -half)).LineTo(new Point(straight, half));
        double error = 0;
        double before = 0;
        for (int i = 0; i <= steps; i++)
        {
            double y = half - (2 * half * i / steps);
            double here = depth(y);
            edge.LineTo(new Point(here, y));
            if (i > 0)
            {
                double middle = depth(y + (half / steps));
                error = Math.Max(error, Math.Abs(middle - ((here + before) / 2)));
            }

            before = here;
        }

        return edge.Close() with
        {
            ErrorMm = error,
        };
    }
}

using Formwright.Curves;

namespace Formwright.Trace.Fairing;

/// <summary>Measures what <see cref="BumpScan"/> found, on the points themselves.</summary>
internal static class BumpMeasure
{
    /// <summary>The height is the top of a parabola through the middle of a bump: this share of its length to each side.</summary>
    private const double TopShare = 0.2;

    /// <summary>Its length ends where it stands away by this share of its height.</summary>
    private const double FootShare = 0.1;

    /// <summary>The bump of a find.</summary>
    /// <param name="find">The find.</param>
    /// <param name="curve">The fair curve of the side.</param>
    /// <param name="feet">Arc length and distance of the side's points, in order.</param>
    /// <param name="side">Which side.</param>
    internal static Bump Of(
        BumpScan.Find find,
        GridCurve curve,
        ReadOnlySpan<(double S, double R)> feet,
        TraceSide side
    )
    {
        double sign = Math.Sign(find.Height);
        (double height, double at) = Top(find, feet);
        (double from, double to) = Ends(find, feet, sign, height);
        double length = Math.Max(to - from, 1);
        CurvePoint place = curve.At(at);
        return new Bump(
            side,
            place.Position.X,
            at,
            length,
            Math.Abs(height),
            height > 0,
            4 * Math.Abs(height) / length * 180 / Math.PI,
            find.Z
        );
    }

    /// <summary>Height and place of the top: least squares parabola, or the matched height where points are few.</summary>
    private static (double Height, double At) Top(
        BumpScan.Find find,
        ReadOnlySpan<(double S, double R)> feet
    )
    {
        double reach = Math.Max(TopShare * find.LengthMm, 2);
        double[] moments = new double[5];
        double[] right = new double[3];
        int count = 0;
        foreach ((double s, double r) in feet)
        {
            double x = (s - find.S) / reach;
            if (Math.Abs(x) > 1)
            {
                continue;
            }

            double power = 1;
            for (int k = 0; k < 5; k++)
            {
                moments[k] += power;
                if (k < 3)
                {
                    right[k] += power * r;
                }

                power *= x;
            }

            count++;
        }

        if (count < 6)
        {
            return (find.Height, find.S);
        }

        double[][] a = Fitting.DenseSolver.Matrix(3);
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                a[i][j] = moments[i + j];
            }
        }

        if (!Fitting.DenseSolver.Solve(a, right) || right[2] * find.Height >= 0)
        {
            return (find.Height, find.S);
        }

        double top = Math.Clamp(-0.5 * right[1] / right[2], -0.8, 0.8);
        double height = right[0] + (top * (right[1] + (top * right[2])));
        return height * find.Height > 0 ? (height, find.S + (top * reach)) : (find.Height, find.S);
    }

    private static (double From, double To) Ends(
        BumpScan.Find find,
        ReadOnlySpan<(double S, double R)> feet,
        double sign,
        double height
    )
    {
        // Means over a tenth of the length, outwards from the middle until they are low.
        double step = Math.Max(find.LengthMm / 10, 1);
        double limit = FootShare * Math.Abs(height);
        double from = find.S;
        double to = find.S;
        while (find.S - from < 1.2 * find.LengthMm && Mean(feet, from - step, from) * sign > limit)
        {
            from -= step;
        }

        while (to - find.S < 1.2 * find.LengthMm && Mean(feet, to, to + step) * sign > limit)
        {
            to += step;
        }

        return (from, to);
    }

    private static double Mean(ReadOnlySpan<(double S, double R)> feet, double from, double to)
    {
        double sum = 0;
        int count = 0;
        foreach ((double s, double r) in feet)
        {
            if (s >= from && s < to)
            {
                sum += r;
                count++;
            }
        }

        return count > 0 ? sum / count : 0;
    }
}

namespace Formwright.Curves.Variation;

/// <summary>
/// A solved span as n equal Euler-spiral segments of the same whole length: the nodal curvatures are the least-squares fit to the
/// curvature plot, under the condition that the segments end exactly where and as the span does.
/// </summary>
internal sealed class SpanSegments
{
    private readonly VariationSpan span;
    private readonly int count;
    private readonly double h;
    private readonly Point[] places;
    private readonly double[] angles;

    private SpanSegments(VariationSpan span, int count)
    {
        this.span = span;
        this.count = count;
        h = span.Length / count;
        Kappa = new double[count + 1];
        places = new Point[count + 1];
        angles = new double[count + 1];
    }

    /// <summary>Curvature at the n + 1 ends of segments.</summary>
    internal double[] Kappa { get; }

    /// <summary>Largest distance between the segments and the span, at ends and middles of segments.</summary>
    internal double Deviation { get; private set; }

    /// <summary>The coarsest division that stays within a deviation, or the finest allowed.</summary>
    internal static SpanSegments Of(VariationSpan span, double deviation, int coarsest, int finest)
    {
        for (int count = coarsest; ; count *= 2)
        {
            SpanSegments made = new(span, count);
            made.Fit();
            made.Meet();
            made.Measure();
            if (made.Deviation <= deviation || count >= finest)
            {
                return made;
            }
        }
    }

    /// <summary>The segments, scaled to mm.</summary>
    internal IEnumerable<EulerSegment> Scaled(double scaleMm)
    {
        double length = h * scaleMm;
        for (int j = 0; j < count; j++)
        {
            double kappa = Kappa[j] / scaleMm;
            yield return new(
                new(places[j].X * scaleMm, places[j].Y * scaleMm),
                angles[j],
                kappa,
                ((Kappa[j + 1] / scaleMm) - kappa) / length,
                length
            );
        }
    }

    /// <summary>Least squares over the hat functions, ends kept.</summary>
    private void Fit()
    {
        double[] load = new double[count + 1];
        GaussLegendre rule = GaussLegendre.Four;
        for (int m = 0; m < count; m++)
        {
            for (int q = 0; q < rule.Nodes.Length; q++)
            {
                double tau = rule.Nodes[q];
                double kappa = CurvatureBasis.Curvature(span.Plot, (m + tau) / count);
                load[m] += rule.Weights[q] * (1 - tau) * kappa;
                load[m + 1] += rule.Weights[q] * tau * kappa;
            }
        }

        Kappa[0] = span.Plot[0];
        Kappa[count] = span.Plot[1];
        load[1] -= Kappa[0] / 6;
        load[count - 1] -= Kappa[count] / 6;
        SolveMass(load);
        Array.Copy(load, 1, Kappa, 1, count - 1);
    }

    /// <summary>Newton's method onto the span's end, moving the inner curvatures by as little as possible in the mean square.</summary>
    private void Meet()
    {
        double[][] rows = [new double[count + 1], new double[count + 1], new double[count + 1]];
        double[][] moves = [new double[count + 1], new double[count + 1], new double[count + 1]];
        double[,] gram = new double[3, 3];
        Span<double> miss = stackalloc double[3];
        for (int round = 0; round < 8; round++)
        {
            Place();
            miss[0] = angles[count] - span.ToAngle;
            miss[1] = places[count].X - span.To.X;
            miss[2] = places[count].Y - span.To.Y;
            if (Math.Abs(miss[0]) + Math.Abs(miss[1]) + Math.Abs(miss[2]) < 1e-14)
            {
                return;
            }

            Derivatives(rows);
            for (int k = 0; k < 3; k++)
            {
                Array.Copy(rows[k], moves[k], count + 1);
                SolveMass(moves[k]);
            }

            for (int k = 0; k < 3; k++)
            {
                for (int m = 0; m < 3; m++)
                {
                    double sum = 0;
                    for (int j = 1; j < count; j++)
                    {
                        sum += rows[m][j] * moves[k][j];
                    }

                    gram[k, m] = sum;
                }
            }

            double[] weights = ThreeByThree.Solve(gram, miss);
            for (int j = 1; j < count; j++)
            {
                Kappa[j] -=
                    (weights[0] * moves[0][j])
                    + (weights[1] * moves[1][j])
                    + (weights[2] * moves[2][j]);
            }
        }

        Place();
    }

    private void Place()
    {
        places[0] = span.From;
        angles[0] = span.FromAngle;
        for (int j = 0; j < count; j++)
        {
            places[j + 1] =
                places[j]
                + EulerIntegral.Displacement(angles[j], Kappa[j], (Kappa[j + 1] - Kappa[j]) / h, h);
            angles[j + 1] = angles[j] + (0.5 * h * (Kappa[j] + Kappa[j + 1]));
        }
    }

    /// <summary>d(angle, x, y of the end)/dκⱼ: a quadrature over both neighbouring segments, and a rotation of all that follows.</summary>
    private void Derivatives(double[][] rows)
    {
        GaussLegendre rule = GaussLegendre.Four;
        foreach (double[] row in rows)
        {
            Array.Clear(row);
        }

        for (int m = 0; m < count; m++)
        {
            double step = Kappa[m + 1] - Kappa[m];
            Vector beyond = places[count] - places[m + 1];
            double first = 0.5 * h;
            for (int end = 0; end < 2; end++)
            {
                // κ at this end of the segment turns all beyond it by h/2.
                rows[0][m + end] += first;
                rows[1][m + end] -= first * beyond.Y;
                rows[2][m + end] += first * beyond.X;
            }

            for (int q = 0; q < rule.Nodes.Length; q++)
            {
                double tau = rule.Nodes[q];
                double angle = angles[m] + (h * tau * (Kappa[m] + (0.5 * tau * step)));
                Vector along = Vector.At(angle) * (h * rule.Weights[q]);
                double late = 0.5 * h * tau * tau;
                double early = (h * tau) - late;
                rows[1][m] -= early * along.Y;
                rows[2][m] += early * along.X;
                rows[1][m + 1] -= late * along.Y;
                rows[2][m + 1] += late * along.X;
            }
        }
    }

    private void Measure()
    {
        GaussLegendre rule = GaussLegendre.Four;
        Span<double> areas = stackalloc double[span.Plot.Length];
        Point exact = span.From;
        double half = 0.5 / count;
        for (int m = 0; m < 2 * count; m++)
        {
            double angle = 0;
            for (int q = 0; q <= rule.Nodes.Length; q++)
            {
                double sigma = (m + (q < rule.Nodes.Length ? rule.Nodes[q] : 1)) * half;
                CurvatureBasis.AreasAt(sigma, areas);
                double phi = 0;
                for (int j = 0; j < areas.Length; j++)
                {
                    phi += areas[j] * span.Plot[j];
                }

                angle = span.FromAngle + (span.Length * phi);
                if (q < rule.Nodes.Length)
                {
                    exact += Vector.At(angle) * (span.Length * half * rule.Weights[q]);
                }
            }

            int segment = m / 2;
            Point made =
                m % 2 == 1
                    ? places[segment + 1]
                    : places[segment]
                        + EulerIntegral.Displacement(
                            angles[segment],
                            Kappa[segment],
                            (Kappa[segment + 1] - Kappa[segment]) / h,
                            0.5 * h
                        );
            Deviation = Math.Max(Deviation, Math.Abs((made - exact).Cross(Vector.At(angle))));
        }
    }

    /// <summary>Solves with the mass matrix of the inner hat functions, (1/6, 2/3, 1/6), in place.</summary>
    private void SolveMass(double[] x)
    {
        double[] upper = new double[count];
        for (int j = 1; j < count; j++)
        {
            double pivot = (2.0 / 3) - (j == 1 ? 0 : upper[j - 1] / 6);
            upper[j] = 1 / (6 * pivot);
            x[j] = (x[j] - (j == 1 ? 0 : x[j - 1] / 6)) / pivot;
        }

        for (int j = count - 2; j >= 1; j--)
        {
            x[j] -= upper[j] * x[j + 1];
        }
    }
}

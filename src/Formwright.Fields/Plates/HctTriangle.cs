using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// The triangle of Hsieh, Clough &amp; Tocher (Clough &amp; Tocher 1965): three cubics on the three parts that the centroid makes, joined with
/// continuous slope, so that plates of such triangles are conforming and their energy is never too low. Twelve unknowns: value and
/// gradient at each vertex, slope across each edge at its middle. Fourth-order accurate in eigenvalues of smooth plates.
/// </summary>
/// <remarks>
/// Worked in Bernstein-Bézier form (G. Farin, CAGD 3, 1986): every ordinate is a row of twelve factors for the unknowns. Part m lies
/// at the edge opposite to vertex m, its corners are vertices m+1, m+2 and the centroid.
/// </remarks>
internal sealed class HctTriangle
{
    internal const int Unknowns = 12;

    private const int Ordinates = 10;

    // Exponents of the ordinates in the two vertices and the centroid.
    private static readonly (int A, int B, int C)[] powers =
    [
        (3, 0, 0),
        (2, 1, 0),
        (1, 2, 0),
        (0, 3, 0),
        (2, 0, 1),
        (1, 1, 1),
        (0, 2, 1),
        (1, 0, 2),
        (0, 1, 2),
        (0, 0, 3),
    ];

    // Ordinate for three corner numbers in any order: 9 a + 3 b + c.
    private static readonly int[] ordinateOf = NumberOrdinates();

    private readonly double[] net = new double[3 * Ordinates * Unknowns];
    private readonly double[] curvatures = new double[27 * Unknowns];
    private readonly Vector[] slopes = new Vector[9];

    /// <param name="corners">Vertices, counter-clockwise.</param>
    /// <param name="normals">Unit normal of the edge opposite to each vertex, along which its slope is counted.</param>
    internal HctTriangle(ReadOnlySpan<Point> corners, ReadOnlySpan<Vector> normals)
    {
        Point centre =
            Point.Origin
            + (
                (corners[0] - Point.Origin)
                + (corners[1] - Point.Origin)
                + (corners[2] - Point.Origin)
            ) * (1.0 / 3);
        Span<double> middle = stackalloc double[3 * Unknowns];
        Span<double> inner = stackalloc double[3 * Unknowns];
        for (int i = 0; i < 3; i++)
        {
            Gradient(inner.Slice(i * Unknowns, Unknowns), i, centre - corners[i]);
        }

        for (int m = 0; m < 3; m++)
        {
            EdgePart(m, corners, centre, normals[m], inner, middle.Slice(m * Unknowns, Unknowns));
        }

        Join(inner, middle);
        for (int part = 0; part < 3; part++)
        {
            FindCurvatures(part);
        }
    }

    /// <summary>Values of the twelve shapes at a place of one part.</summary>
    /// <param name="part">Number of the part.</param>
    /// <param name="a">Barycentric coordinate of its first vertex.</param>
    /// <param name="b">That of its second vertex.</param>
    /// <param name="row">Twelve entries, overwritten.</param>
    internal void Values(int part, double a, double b, Span<double> row)
    {
        double c = 1 - a - b;
        Combine(
            [
                a * a * a,
                3 * a * a * b,
                3 * a * b * b,
                b * b * b,
                3 * a * a * c,
                6 * a * b * c,
                3 * b * b * c,
                3 * a * c * c,
                3 * b * c * c,
                c * c * c,
            ],
            ref net[part * Ordinates * Unknowns],
            row
        );
    }

    /// <summary>Slopes by x and by y.</summary>
    /// <inheritdoc cref="Values"/>
    /// <param name="part">Number of the part.</param>
    /// <param name="a">Barycentric coordinate of its first vertex.</param>
    /// <param name="b">That of its second vertex.</param>
    /// <param name="rows">Two rows of twelve, overwritten.</param>
    internal void Slopes(int part, double a, double b, Span<double> rows)
    {
        Span<double> bary = [a, b, 1 - a - b];
        Span<double> byX = stackalloc double[Ordinates];
        Span<double> byY = stackalloc double[Ordinates];
        byX.Clear();
        byY.Clear();
        for (int at = 0; at < 27; at++)
        {
            double factor = 3 * bary[at / 3 % 3] * bary[at % 3];
            byX[ordinateOf[at]] += factor * slopes[(3 * part) + (at / 9)].X;
            byY[ordinateOf[at]] += factor * slopes[(3 * part) + (at / 9)].Y;
        }

        Combine(byX, ref net[part * Ordinates * Unknowns], rows[..Unknowns]);
        Combine(byY, ref net[part * Ordinates * Unknowns], rows[Unknowns..]);
    }

    /// <summary>Second derivatives by xx, yy and xy: linear within a part.</summary>
    /// <inheritdoc cref="Values"/>
    /// <param name="part">Number of the part.</param>
    /// <param name="a">Barycentric coordinate of its first vertex.</param>
    /// <param name="b">That of its second vertex.</param>
    /// <param name="rows">Three rows of twelve, overwritten.</param>
    internal void Curvatures(int part, double a, double b, Span<double> rows)
    {
        for (int row = 0; row < 3; row++)
        {
            Combine(
                [a, b, 1 - a - b],
                ref curvatures[((3 * part) + row) * 3 * Unknowns],
                rows.Slice(row * Unknowns, Unknowns)
            );
        }
    }

    /// <summary>A sum of rows of twelve with factors.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Combine(ReadOnlySpan<double> factors, ref double source, Span<double> row)
    {
        Vector256<double> low = default;
        Vector256<double> middle = default;
        Vector256<double> high = default;
        for (int i = 0; i < factors.Length; i++)
        {
            Vector256<double> factor = Vector256.Create(factors[i]);
            nuint at = (nuint)(i * Unknowns);
            low = Sum(factor, Vector256.LoadUnsafe(ref source, at), low);
            middle = Sum(factor, Vector256.LoadUnsafe(ref source, at + 4), middle);
            high = Sum(factor, Vector256.LoadUnsafe(ref source, at + 8), high);
        }

        low.CopyTo(row);
        middle.CopyTo(row[4..]);
        high.CopyTo(row[8..]);
    }

    /// <summary>Second derivatives at the corners of a part: three rows (xx, yy, xy) of three corners each.</summary>
    private void FindCurvatures(int part)
    {
        Span<double> factors = stackalloc double[3 * Ordinates];
        for (int corner = 0; corner < 3; corner++)
        {
            factors.Clear();
            for (int at = 0; at < 9; at++)
            {
                Vector first = slopes[(3 * part) + (at / 3)];
                Vector second = slopes[(3 * part) + (at % 3)];
                int ordinate = ordinateOf[(3 * at) + corner];
                factors[ordinate] += 6 * first.X * second.X;
                factors[Ordinates + ordinate] += 6 * first.Y * second.Y;
                factors[(2 * Ordinates) + ordinate] += 6 * first.X * second.Y;
            }

            for (int row = 0; row < 3; row++)
            {
                Combine(
                    factors.Slice(row * Ordinates, Ordinates),
                    ref net[part * Ordinates * Unknowns],
                    curvatures.AsSpan(((((3 * part) + row) * 3) + corner) * Unknowns, Unknowns)
                );
            }
        }
    }

    private static Vector256<double> Sum(
        Vector256<double> factor,
        Vector256<double> value,
        Vector256<double> sum
    ) => Vector256.MultiplyAddEstimate(factor, value, sum);

    private Span<double> Net(int part, int ordinate) =>
        net.AsSpan(((part * Ordinates) + ordinate) * Unknowns, Unknowns);

    /// <summary>Value at a vertex plus a third of its slope along a step.</summary>
    private static void Gradient(Span<double> target, int vertex, Vector step)
    {
        target.Clear();
        target[3 * vertex] = 1;
        target[(3 * vertex) + 1] = step.X / 3;
        target[(3 * vertex) + 2] = step.Y / 3;
    }

    private void EdgePart(
        int m,
        ReadOnlySpan<Point> corners,
        Point centre,
        Vector normal,
        ReadOnlySpan<double> inner,
        Span<double> middle
    )
    {
        int a = (m + 1) % 3;
        int b = (m + 2) % 3;
        Vector edge = corners[b] - corners[a];
        double twice = edge.Cross(centre - corners[a]);
        slopes[3 * m] = (centre - corners[b]).Left * (1 / twice);
        slopes[(3 * m) + 1] = (corners[a] - centre).Left * (1 / twice);
        slopes[(3 * m) + 2] = edge.Left * (1 / twice);
        Net(m, 0)[3 * a] = 1;
        Gradient(Net(m, 1), a, edge);
        Gradient(Net(m, 2), b, -edge);
        Net(m, 3)[3 * b] = 1;
        inner.Slice(a * Unknowns, Unknowns).CopyTo(Net(m, 4));
        inner.Slice(b * Unknowns, Unknowns).CopyTo(Net(m, 6));

        // The slope across the edge at its middle fixes the ordinate in the middle of the part.
        double da = slopes[3 * m].Dot(normal);
        double db = slopes[(3 * m) + 1].Dot(normal);
        double dc = slopes[(3 * m) + 2].Dot(normal);
        for (int k = 0; k < Unknowns; k++)
        {
            double along =
                (da * (Net(m, 0)[k] + (2 * Net(m, 1)[k]) + Net(m, 2)[k]))
                + (db * (Net(m, 1)[k] + (2 * Net(m, 2)[k]) + Net(m, 3)[k]));
            double slope = k == 9 + m ? 4.0 / 3 : 0;
            middle[k] = (((slope - along) / dc) - Net(m, 4)[k] - Net(m, 6)[k]) / 2;
        }

        middle.CopyTo(Net(m, 5));
    }

    /// <summary>The ordinates around the centroid follow from continuous slope across the inner edges.</summary>
    private void Join(ReadOnlySpan<double> inner, ReadOnlySpan<double> middle)
    {
        Span<double> ring = stackalloc double[3 * Unknowns];
        for (int i = 0; i < 3; i++)
        {
            int j = (i + 1) % 3;
            int l = (i + 2) % 3;
            for (int k = 0; k < Unknowns; k++)
            {
                ring[(i * Unknowns) + k] =
                    (
                        inner[(i * Unknowns) + k]
                        + middle[(j * Unknowns) + k]
                        + middle[(l * Unknowns) + k]
                    ) / 3;
            }
        }

        for (int m = 0; m < 3; m++)
        {
            ring.Slice((m + 1) % 3 * Unknowns, Unknowns).CopyTo(Net(m, 7));
            ring.Slice((m + 2) % 3 * Unknowns, Unknowns).CopyTo(Net(m, 8));
            for (int k = 0; k < Unknowns; k++)
            {
                Net(m, 9)[k] = (ring[k] + ring[Unknowns + k] + ring[(2 * Unknowns) + k]) / 3;
            }
        }
    }

    private static int[] NumberOrdinates()
    {
        int[] numbers = new int[27];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                for (int k = 0; k < 3; k++)
                {
                    int inA = (i == 0 ? 1 : 0) + (j == 0 ? 1 : 0) + (k == 0 ? 1 : 0);
                    int inB = (i == 1 ? 1 : 0) + (j == 1 ? 1 : 0) + (k == 1 ? 1 : 0);
                    numbers[(9 * i) + (3 * j) + k] = Array.IndexOf(
                        powers,
                        (inA, inB, 3 - inA - inB)
                    );
                }
            }
        }

        return numbers;
    }
}

using Formwright.Curves;
using Formwright.Fields.Plates;

namespace Formwright.Plates.Tests.Plates;

/// <summary>Regular meshes of a rectangle, n × m squares cut along alternating diagonals, to measure orders of convergence on.</summary>
internal static class Square
{
    internal static PlateMesh Mesh(int n, int m, double lengthMm = 1, double widthMm = 1)
    {
        var points = new List<Point>();
        for (int j = 0; j <= m; j++)
        {
            for (int i = 0; i <= n; i++)
            {
                points.Add(new(lengthMm * i / n, widthMm * j / m));
            }
        }

        var triangles = new List<int>();
        for (int j = 0; j < m; j++)
        {
            for (int i = 0; i < n; i++)
            {
                int a = (j * (n + 1)) + i;
                int b = a + 1;
                int c = a + n + 1;
                int d = c + 1;
                triangles.AddRange((i + j) % 2 == 0 ? [a, b, d, a, d, c] : [a, b, c, b, d, c]);
            }
        }

        return PlateMesh.FromTriangles(points, triangles);
    }

    internal static Plate Plate(EdgeSupport support, PlateWood? wood = null) =>
        new()
        {
            Rim = Rims.Rectangle(1, 1),
            Wood = wood ?? Woods.Unit,
            ThicknessMm = _ => 1,
            Support = support,
        };

    /// <summary>Order of convergence from errors at halved edge lengths.</summary>
    internal static double Order(double coarseError, double fineError) =>
        Math.Log2(Math.Abs(coarseError) / Math.Abs(fineError));
}

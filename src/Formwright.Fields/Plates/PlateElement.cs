using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>
/// One triangle of a plate: rise and slope by <see cref="HctTriangle"/>, movement in the plane by quadratics on vertices and edge middles.
/// Its 24 unknowns: 12 of the rise, then (u, v) of the three vertices and of the three edges, all in the plate's axes.
/// </summary>
internal sealed class PlateElement
{
    internal const int Bending = HctTriangle.Unknowns;
    internal const int All = 24;

    private readonly HctTriangle shape;
    private readonly Point[] corners;
    private readonly Vector[] slopes = new Vector[3];

    internal PlateElement(Point[] corners, Vector[] normals)
    {
        this.corners = corners;
        shape = new(corners, normals);
        double twice = (corners[1] - corners[0]).Cross(corners[2] - corners[0]);
        for (int i = 0; i < 3; i++)
        {
            slopes[i] = (corners[(i + 2) % 3] - corners[(i + 1) % 3]).Left * (1 / twice);
        }

        Centre =
            Point.Origin
            + (
                (corners[0] - Point.Origin)
                + (corners[1] - Point.Origin)
                + (corners[2] - Point.Origin)
            ) * (1.0 / 3);
    }

    internal Point Centre { get; }

    internal ReadOnlySpan<Point> Corners => corners;

    /// <summary>Corners of one of the three parts.</summary>
    internal Point[] Part(int part) => [corners[(part + 1) % 3], corners[(part + 2) % 3], Centre];

    /// <summary>Barycentric coordinates of a place; negative beyond the opposite edge.</summary>
    internal (double, double, double) Barycentric(Point place)
    {
        double a = slopes[0].Dot(place - corners[1]);
        double b = slopes[1].Dot(place - corners[2]);
        return (a, b, 1 - a - b);
    }

    /// <summary>The part that holds a place.</summary>
    internal int PartOf(Point place)
    {
        (double a, double b, double c) = Barycentric(place);
        return a <= b && a <= c ? 0
            : b <= c ? 1
            : 2;
    }

    /// <summary>Fills the values at a place of a part (which it may leave a little, on a curved rim).</summary>
    internal void Values(int part, Point place, ElementShapes shapes)
    {
        (double a, double b) = Coordinates(part, place, shapes);
        shape.Values(part, a, b, shapes.W);
        ReadOnlySpan<double> bary = shapes.Bary;
        for (int i = 0; i < 3; i++)
        {
            shapes.Shift[i] = bary[i] * ((2 * bary[i]) - 1);
            shapes.Shift[3 + i] = 4 * bary[(i + 1) % 3] * bary[(i + 2) % 3];
        }
    }

    /// <summary>Fills the slopes of the rise.</summary>
    internal void Slopes(int part, Point place, ElementShapes shapes)
    {
        (double a, double b) = Coordinates(part, place, shapes);
        shape.Slopes(part, a, b, shapes.Slopes);
    }

    /// <summary>Fills the strains: second derivatives of the rise, first ones of the movement in the plane.</summary>
    internal void Strains(int part, Point place, ElementShapes shapes)
    {
        (double a, double b) = Coordinates(part, place, shapes);
        shape.Curvatures(part, a, b, shapes.Curvatures);
        ReadOnlySpan<double> bary = shapes.Bary;
        for (int i = 0; i < 3; i++)
        {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            double own = (4 * bary[i]) - 1;
            shapes.ShiftX[i] = own * slopes[i].X;
            shapes.ShiftY[i] = own * slopes[i].Y;
            shapes.ShiftX[3 + i] = 4 * ((bary[j] * slopes[k].X) + (bary[k] * slopes[j].X));
            shapes.ShiftY[3 + i] = 4 * ((bary[j] * slopes[k].Y) + (bary[k] * slopes[j].Y));
        }
    }

    private (double A, double B) Coordinates(int part, Point place, ElementShapes shapes)
    {
        Span<double> bary = shapes.Bary;
        (bary[0], bary[1], bary[2]) = Barycentric(place);
        return (bary[(part + 1) % 3] - bary[part], bary[(part + 2) % 3] - bary[part]);
    }
}

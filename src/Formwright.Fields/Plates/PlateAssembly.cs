using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Sums the energy of a plate, its braces and patches into element matrices, in the plate's axes.</summary>
/// <remarks>Masses are kept in tonnes (N, mm, s), so that K x = ω² M x gives ω in rad/s.</remarks>
internal sealed class PlateAssembly
{
    // kg/m³ to t/mm³.
    private const double TonnesPerMm3 = 1e-12;

    private readonly Plate plate;
    private readonly PlateTriangles triangles;
    private readonly ElementShapes shapes = new();
    private readonly double[] stretch = new double[3 * PlateElement.All];
    private readonly double[] bend = new double[3 * PlateElement.Bending];
    private readonly double[] row = new double[PlateElement.All];
    private readonly int width;

    internal PlateAssembly(Plate plate, PlateTriangles triangles)
    {
        this.plate = plate;
        this.triangles = triangles;
        width = plate.IsCoupled ? PlateElement.All : PlateElement.Bending;
        Stiffness = new ElementMatrix[triangles.Count];
        Mass = new ElementMatrix[triangles.Count];
        double[] q = plate.Wood.Stiffness(plate.GrainAngleRad);
        for (int e = 0; e < triangles.Count; e++)
        {
            Stiffness[e] = new(width);
            Mass[e] = new(width);
            foreach (ElementPoint point in triangles.PointsOf(e, PlateTriangles.StiffnessPoints))
            {
                double thickness = ThicknessAt(point.Place);
                AddLayer(e, point, q, thickness, 0);
                AreaMm2 += point.Weight;
            }

            foreach (ElementPoint point in triangles.PointsOf(e, PlateTriangles.MassPoints))
            {
                double thickness = ThicknessAt(point.Place);
                triangles[e].Values(point.Part, point.Place, shapes);
                double mass = plate.Wood.DensityKgM3 * TonnesPerMm3 * thickness * point.Weight;
                AddMass(e, mass);
            }
        }

        foreach (PlatePatch patch in plate.Patches)
        {
            AddPatch(patch);
        }

        foreach (PlateBrace brace in plate.Braces)
        {
            AddBrace(brace);
        }
    }

    internal ElementMatrix[] Stiffness { get; }

    internal ElementMatrix[] Mass { get; }

    /// <summary>Area of the plate, mm².</summary>
    internal double AreaMm2 { get; private set; }

    /// <summary>Mass of everything, kg.</summary>
    internal double MassKg { get; private set; }

    /// <summary>Length of braces that lies over no part of the plate, mm.</summary>
    internal double StrayBraceMm { get; private set; }

    private double ThicknessAt(Point place)
    {
        double thickness = plate.ThicknessMm(place);
        return double.IsFinite(thickness) && thickness > 0
            ? thickness
            : throw new ArgumentException(
                FormattableString.Invariant(
                    $"The thickness at ({place.X:0.0}, {place.Y:0.0}) is {thickness} mm."
                )
            );
    }

    private Vector DomeAt(int e, ElementPoint point)
    {
        if (plate.DomeSlope is null)
        {
            shapes.Slopes.Clear();
            return default;
        }

        triangles[e].Slopes(point.Part, point.Place, shapes);
        return plate.DomeSlope(point.Place);
    }

    /// <summary>A sheet whose middle lies at <paramref name="z"/> over the middle of the plate: it stretches by e - zκ and bends by κ.</summary>
    private void AddLayer(int e, ElementPoint point, double[] q, double thickness, double z)
    {
        const int n = PlateElement.Bending;
        triangles[e].Strains(point.Part, point.Place, shapes);
        for (int k = 0; k < n; k++)
        {
            bend[k] = shapes.Wxx[k];
            bend[n + k] = shapes.Wyy[k];
            bend[(2 * n) + k] = 2 * shapes.Wxy[k];
        }

        double cube = thickness * thickness * thickness / 12;
        Stiffness[e].AddEnergy(point.Weight * cube, bend, q);
        if (width == PlateElement.Bending)
        {
            return;
        }

        // A flat plate's own stretching knows nothing of its rise.
        bool apart = z == 0 && plate.DomeSlope is null;
        int all = apart ? PlateElement.All - n : PlateElement.All;
        int shift = apart ? 0 : n;
        if (!apart)
        {
            Vector dome = DomeAt(e, point);
            for (int k = 0; k < n; k++)
            {
                double wx = shapes.Wx[k];
                double wy = shapes.Wy[k];
                stretch[k] = (dome.X * wx) - (z * bend[k]);
                stretch[all + k] = (dome.Y * wy) - (z * bend[n + k]);
                stretch[(2 * all) + k] = (dome.X * wy) + (dome.Y * wx) - (z * bend[(2 * n) + k]);
            }
        }

        for (int node = 0; node < 6; node++)
        {
            int u = shift + (2 * node);
            stretch[u] = shapes.ShiftX[node];
            stretch[u + 1] = 0;
            stretch[all + u] = 0;
            stretch[all + u + 1] = shapes.ShiftY[node];
            stretch[(2 * all) + u] = shapes.ShiftY[node];
            stretch[(2 * all) + u + 1] = shapes.ShiftX[node];
        }

        Stiffness[e].AddEnergy(point.Weight * thickness, stretch.AsSpan(0, 3 * all), q, n - shift);
    }

    private void AddMass(int e, double mass)
    {
        MassKg += mass * 1000;
        Mass[e].AddProduct(mass, shapes.W, shapes.W);
        if (width == PlateElement.Bending)
        {
            return;
        }

        for (int i = 0; i < 6; i++)
        {
            for (int j = 0; j < 6; j++)
            {
                double share = mass * shapes.Shift[i] * shapes.Shift[j];
                int u = PlateElement.Bending + (2 * i);
                int v = PlateElement.Bending + (2 * j);
                Mass[e].Values[(u * width) + v] += share;
                Mass[e].Values[((u + 1) * width) + v + 1] += share;
            }
        }
    }

    private void AddPatch(PlatePatch patch)
    {
        double[] q = patch.Wood.Stiffness(patch.GrainAngleRad);
        foreach ((int e, ElementPoint point) in triangles.PointsIn(patch.Corners.AsSpan()))
        {
            double z = (ThicknessAt(point.Place) + patch.ThicknessMm) / 2;
            AddLayer(e, point, q, patch.ThicknessMm, patch.IsOutside ? z : -z);
            triangles[e].Values(point.Part, point.Place, shapes);
            AddMass(e, patch.Wood.DensityKgM3 * TonnesPerMm3 * patch.ThicknessMm * point.Weight);
        }
    }

    private void AddBrace(PlateBrace brace)
    {
        double found = 0;
        for (int i = 0; i + 1 < brace.Stations.Length; i++)
        {
            (Point from, double startHeight) = brace.Stations[i];
            (Point to, double endHeight) = brace.Stations[i + 1];
            Vector along = (to - from) * (1 / from.DistanceTo(to));
            foreach ((int e, ElementPoint point, double share) in triangles.PointsAlong(from, to))
            {
                found += point.Weight;
                double height = startHeight + (share * (endHeight - startHeight));
                double z = brace.OffsetMm ?? -(ThicknessAt(point.Place) + height) / 2;
                AddBeam(e, brace, point, height, z, along);
            }
        }

        StrayBraceMm += Math.Max(0, brace.LengthMm - found);
    }

    private void AddBeam(
        int e,
        PlateBrace brace,
        ElementPoint point,
        double height,
        double z,
        Vector along
    )
    {
        double area = brace.WidthMm * height;
        double c = along.X;
        double s = along.Y;
        triangles[e].Values(point.Part, point.Place, shapes);
        triangles[e].Strains(point.Part, point.Place, shapes);
        const int n = PlateElement.Bending;
        Span<double> curve = row.AsSpan(0, n);
        Span<double> twist = bend.AsSpan(0, n);
        for (int k = 0; k < n; k++)
        {
            curve[k] =
                (c * c * shapes.Wxx[k]) + (2 * c * s * shapes.Wxy[k]) + (s * s * shapes.Wyy[k]);
            twist[k] =
                (c * s * (shapes.Wyy[k] - shapes.Wxx[k])) + (((c * c) - (s * s)) * shapes.Wxy[k]);
        }

        double bending = brace.ModulusMpa * area * height * height / 12;
        double torsion = brace.ShearMpa * PlateBrace.TorsionConstant(brace.WidthMm, height);
        Stiffness[e].AddProduct(point.Weight * bending, curve, curve);
        Stiffness[e].AddProduct(point.Weight * torsion, twist, twist);
        AddMass(e, brace.DensityKgM3 * TonnesPerMm3 * area * point.Weight);
        if (width == PlateElement.Bending)
        {
            return;
        }

        Vector dome = DomeAt(e, point);
        double climb = dome.Dot(along);
        for (int k = 0; k < n; k++)
        {
            curve[k] = (climb * ((c * shapes.Wx[k]) + (s * shapes.Wy[k]))) - (z * curve[k]);
        }

        for (int node = 0; node < 6; node++)
        {
            double slope = (c * shapes.ShiftX[node]) + (s * shapes.ShiftY[node]);
            row[n + (2 * node)] = c * slope;
            row[n + (2 * node) + 1] = s * slope;
        }

        Stiffness[e].AddProduct(point.Weight * brace.ModulusMpa * area, row, row);
    }
}

using Formwright.Curves;

namespace Formwright.Fields.Plates;

/// <summary>Chooses the edge length that gives a wanted number of unknowns, and which lines the mesh follows.</summary>
internal static class PlateMeshing
{
    private const int MostTries = 8;
    private const int MostRefinements = 5;

    internal static PlateMesh Mesh(Plate plate, int unknowns)
    {
        RimLoop[] loops = PlateMesh.LoopsOf(plate.Rim, plate.Holes);
        var lines = new MeshLines([
            .. plate.Patches.Select(patch => (Point[])[.. patch.Corners, patch.Corners[0]]),
            .. plate.Braces.Select(brace =>
                (Point[])[.. brace.Stations.Select(station => station.At)]
            ),
        ]);
        double length = loops[0].LengthMm / 40;
        MeshPoints best = new(loops, lines, length);
        double miss = double.PositiveInfinity;
        for (int tried = 0; tried < MostTries && miss > 0.02; tried++)
        {
            var points = new MeshPoints(loops, lines, length);
            double ratio = Estimate(points, plate, loops.Length - 1) / unknowns;
            if (Math.Abs(ratio - 1) < miss)
            {
                miss = Math.Abs(ratio - 1);
                best = points;
            }

            length *= Math.Sqrt(ratio);
        }

        // Where rim and hole come close together, edges of that length may not pass between them.
        for (int tried = 0; tried < MostRefinements; tried++)
        {
            if (PlateMesh.TryOf(best, out _) is PlateMesh mesh)
            {
                return mesh;
            }

            best = new(loops, lines, 0.7 * best.LengthMm);
        }

        return PlateMesh.Of(best);
    }

    /// <summary>Unknowns of the mesh on these points, by Euler's formula, without those that the rim holds.</summary>
    private static double Estimate(MeshPoints points, Plate plate, int holes)
    {
        double vertices = points.Points.Count;
        double rim = points.RimCount;
        double edges = (3 * vertices) - rim - 3 + (3 * holes);
        double outer = points.Edges.Count(edge => !edge.IsHole);
        EdgeSupport support = plate.Support;
        double held =
            support.Bending switch
            {
                RimSupport.Free => 0,
                RimSupport.Hinged => 2,
                _ => 4,
            } * outer;
        if (!plate.IsCoupled)
        {
            return (3 * vertices) + edges - held;
        }

        held +=
            support.InPlane switch
            {
                InPlaneSupport.Free => 0,
                InPlaneSupport.AlongRim => 2,
                _ => 4,
            } * outer;
        return (5 * vertices) + (3 * edges) - held;
    }
}

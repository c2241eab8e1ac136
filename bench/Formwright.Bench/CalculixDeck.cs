using System.Globalization;
using System.Text;
using Formwright.Curves;
using Formwright.Fields.Plates;

namespace Formwright.Bench;

/// <summary>
/// The Heron's bare soundboard (no braces, no bridge) on the plate model's own mesh as an input for CalculiX, a public finite-element
/// program: quadratic shells S6, hinged rim, twenty frequencies, so that answers and cost can be laid side by side.
/// </summary>
internal static class CalculixDeck
{
    internal static Plate Bare { get; } =
        HeronSoundboard.Plate with
        {
            Braces = [],
            Patches = [],
            ThicknessMm = _ => 2.5,
        };

    internal static string Of(PlateModel model)
    {
        PlateMesh mesh = model.Mesh;
        PlateWood wood = Bare.Wood;
        var text = new StringBuilder("*NODE, NSET=ALL\n");
        int count = mesh.Points.Length;
        for (int i = 0; i < count; i++)
        {
            Node(text, i + 1, mesh.Points[i]);
        }

        var middles = new Dictionary<(int, int), int>();
        foreach ((int from, int to) in mesh.Edges)
        {
            middles[(from, to)] = ++count;
            Node(text, count, mesh.Points[from].Towards(mesh.Points[to], 0.5));
        }

        int Middle(int a, int b) => middles[(Math.Min(a, b), Math.Max(a, b))];
        text.Append("*ELEMENT, TYPE=S6, ELSET=PLATE\n");
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            int a = mesh.Triangles[3 * t];
            int b = mesh.Triangles[(3 * t) + 1];
            int c = mesh.Triangles[(3 * t) + 2];
            Line(text, [t + 1, a + 1, b + 1, c + 1, Middle(a, b), Middle(b, c), Middle(c, a)]);
        }

        text.Append("*NSET, NSET=RIM\n");
        foreach (RimEdge edge in mesh.Rim.Where(edge => !edge.IsHole))
        {
            Line(text, [edge.From + 1]);
            Line(text, [Middle(edge.From, edge.To)]);
        }

        // Thin as the board is, only E_L, E_R, G_LR and ν_LR matter. The other shear moduli are of the same size: much stiffer ones lock these shells.
        double[] constants =
        [
            wood.AlongMpa,
            wood.AcrossMpa,
            wood.AcrossMpa,
            wood.Poisson,
            0,
            0,
            wood.ShearMpa,
            wood.ShearMpa,
            wood.ShearMpa,
            20,
        ];
        text.Append("*MATERIAL, NAME=WOOD\n*ELASTIC, TYPE=ENGINEERING CONSTANTS\n");
        Line(text, constants[..8]);
        Line(text, constants[8..]);
        text.Append("*DENSITY\n");
        Line(text, [wood.DensityKgM3 * 1e-12]);
        text.Append("*ORIENTATION, NAME=GRAIN, SYSTEM=RECTANGULAR\n1,0,0,0,1,0\n");
        text.Append("*SHELL SECTION, ELSET=PLATE, MATERIAL=WOOD, ORIENTATION=GRAIN\n2.5\n");
        text.Append("*BOUNDARY\nRIM,1,3\n*STEP\n*FREQUENCY\n20\n*END STEP\n");
        return text.ToString();
    }

    private static void Node(StringBuilder text, int number, Point place) =>
        Line(text, [number, place.X, place.Y, 0]);

    private static void Line(StringBuilder text, IEnumerable<double> values) =>
        text.AppendJoin(
                ',',
                values.Select(value => value.ToString("G10", CultureInfo.InvariantCulture))
            )
            .Append('\n');
}

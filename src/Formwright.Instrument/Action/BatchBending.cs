using System.Runtime.Intrinsics;
using Formwright.Design.Sections;
using Formwright.Instrument.Necks;

namespace Formwright.Instrument.Action;

/// <summary>The bending of <see cref="NeckLoad"/> for four builds at once, at the nut and at fret 12.</summary>
/// <param name="geometry">Where things stand.</param>
/// <param name="total">ΣT, N.</param>
/// <param name="nutHeight">ΣT cn, N·mm.</param>
internal sealed class BatchBending(ChainGeometry geometry, double total, double nutHeight)
{
    private readonly Node[] nodes = NodesOf(geometry);

    /// <summary>Bends the neck of four builds.</summary>
    public Bending Of(
        Vector256<double> boardNut,
        Vector256<double> boardJoin,
        Vector256<double> fret,
        Vector256<double> nutUp,
        Vector256<double> tension,
        Vector256<double> neckModulus,
        Vector256<double> boardModulus,
        Vector256<double> thicker
    )
    {
        Vector256<double> slope = boardJoin - boardNut;
        Vector256<double> pull = tension * total;
        Vector256<double> atNut = tension * (Vector256.Create(nutHeight) + (nutUp * total));
        Vector256<double> third = Vector256.Create(1.0 / 3);
        Bending sum = default;
        foreach (ref readonly Node node in nodes.AsSpan())
        {
            Vector256<double> board = boardNut + (slope * node.Along);
            Vector256<double> t = thicker + Vector256.Create(node.Thickness);
            Vector256<double> en = neckModulus * node.Width;
            Vector256<double> ef = boardModulus * node.Width * board;
            Vector256<double> ent = en * t;
            Vector256<double> less = Vector256.Create(node.BarModulus) - neckModulus;
            Vector256<double> ea = (ent * node.Form.A) + ef + (less * node.Bar.A);
            Vector256<double> es =
                (ent * t * node.Form.S) - (ef * board * 0.5) + (less * node.Bar.S);
            Vector256<double> ej =
                (ent * t * t * node.Form.J) + (ef * board * board * third) + (less * node.Bar.J);
            Vector256<double> inverse = Vector256<double>.One / ((ej * ea) - (es * es));

            // 1/EI = EA/(EA·EJ - ES²); the neutral axis stands ES/EA under the face, so EA (f + tf + c) needs one division only.
            Vector256<double> stiffness = ea * inverse;
            Vector256<double> curvature =
                (((fret + board) * ea) + es) * inverse * pull
                + (stiffness * atNut * (1 - node.Along));
            Vector256<double> unit = stiffness * node.Along;
            sum.Nut += curvature * node.NutWeight;
            sum.NutPerMoment += unit * node.NutWeight;
            sum.Action += curvature * node.ActionWeight;
            sum.ActionPerMoment += unit * node.ActionWeight;
        }

        return sum;
    }

    private static Node[] NodesOf(ChainGeometry geometry)
    {
        Cantilever beam = geometry.SparseBeam;
        NeckBarDesign bar = geometry.Profile.Bar;
        double area = bar.IsPresent ? bar.WidthMm * bar.DepthMm : 0;
        double middle = bar.BelowFaceMm + (0.5 * bar.DepthMm);
        SectionForm barForm = new(
            area,
            area * middle,
            area * ((middle * middle) + (bar.DepthMm * bar.DepthMm / 12))
        );
        Node[] nodes = new Node[beam.PointsMm.Count];
        for (int q = 0; q < nodes.Length; q++)
        {
            double x = beam.PointsMm[q];
            NeckPlace place = geometry.Profile.At(x);
            nodes[q] = new(
                x / geometry.JoinMm,
                place.WidthMm,
                place.ThicknessMm,
                geometry.Profile.Form,
                barForm,
                1000 * bar.ModulusGPa,
                beam.WeightsMm[q] * x,
                beam.WeightsMm[q] * Math.Max(0, x - geometry.ActionFretMm)
            );
        }

        return nodes;
    }

    private readonly record struct Node(
        double Along,
        double Width,
        double Thickness,
        SectionForm Form,
        SectionForm Bar,
        double BarModulus,
        double NutWeight,
        double ActionWeight
    );

    /// <summary>Rise by what does not depend on H, and for one N·mm of H (see <see cref="NeckLoad"/>).</summary>
    internal struct Bending
    {
        public Vector256<double> Nut;
        public Vector256<double> NutPerMoment;
        public Vector256<double> Action;
        public Vector256<double> ActionPerMoment;
    }
}

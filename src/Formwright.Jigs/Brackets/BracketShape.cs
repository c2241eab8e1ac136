using Formwright.Curves;
using Formwright.Design.Sections;

namespace Formwright.Jigs.Brackets;

/// <summary>The bracket as seen from above, and where its bolt can stand.</summary>
public sealed class BracketShape
{
    private readonly BracketDesign design;

    public BracketShape(BracketDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        this.design = design;

        // The flanks leave the faces at their slopes and meet where both say the same half width.
        double front = Math.Tan((design.FrontSlopeDeg - 90) * Math.PI / 180);
        double rear = Math.Tan((design.RearSlopeDeg - 90) * Math.PI / 180);
        double meet =
            ((design.RearFaceMm / 2) - (design.FrontFaceMm / 2) + (rear * design.BaseMm))
            / (front + rear);
        FlanksMeet = meet > 0 && meet < design.BaseMm;
        WidestAtMm = Math.Clamp(meet, 0, design.BaseMm);
        WidthMm = FlanksMeet
            ? design.FrontFaceMm + (2 * front * meet)
            : Math.Max(design.FrontFaceMm, design.RearFaceMm);
        double half = WidthMm / 2;
        Plan =
        [
            new(0, design.FrontFaceMm / 2),
            new(0, -design.FrontFaceMm / 2),
            new(WidestAtMm, -half),
            new(design.BaseMm, -design.RearFaceMm / 2),
            new(design.BaseMm, design.RearFaceMm / 2),
            new(WidestAtMm, half),
        ];
        FootLayers = Math.Max(1, (int)Math.Round(design.SeatMm / design.LayerMm));
        Layers = Math.Max(FootLayers, (int)Math.Ceiling((design.HeightMm / design.LayerMm) - 1e-9));
    }

    /// <summary>Whether both flanks meet between the faces; if not, the slopes and face widths contradict each other.</summary>
    public bool FlanksMeet { get; }

    /// <summary>Greatest width across, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Where it is widest, from the front face, mm.</summary>
    public double WidestAtMm { get; }

    /// <summary>Layers below washer and nut.</summary>
    public int FootLayers { get; }

    /// <summary>All layers; the topmost is planed to the height.</summary>
    public int Layers { get; }

    /// <summary>Height at which washer and nut really sit, mm.</summary>
    public double SeatMm => Math.Min(FootLayers * design.LayerMm, design.HeightMm);

    /// <summary>Corners, counter-clockwise: x from the front face into the bracket, y across, mm.</summary>
    public IReadOnlyList<Point> Plan { get; }

    /// <summary>Width of a face, mm.</summary>
    public double FaceWidthMm(BracketFace face) =>
        face == BracketFace.Front ? design.FrontFaceMm : design.RearFaceMm;

    /// <summary>Angle between face and foot, degrees.</summary>
    public double FaceAngleDeg(BracketFace face) =>
        face == BracketFace.Front ? design.FrontAngleDeg : design.RearAngleDeg;

    /// <summary>Heights over the board at which a face touches ribs of a height, mm; one height for a face that leans.</summary>
    public (double FromMm, double ToMm) ContactHeights(BracketFace face, double ribMm)
    {
        double top = Math.Min(design.HeightMm, ribMm);
        double foot = Math.Min(design.ReliefHeightMm, top);
        double angle = FaceAngleDeg(face);
        return angle > 90 ? (top, top)
            : angle < 90 ? (foot, foot)
            : (foot, top);
    }

    /// <summary>How far the face stands in front of its own foot at the height where it touches, mm.</summary>
    public double LeanMm(BracketFace face, double ribMm) =>
        ContactHeights(face, ribMm).FromMm * Math.Tan((FaceAngleDeg(face) - 90) * Math.PI / 180);

    /// <summary>Nearest and farthest place of the bolt's centre behind the touching line of a face, mm.</summary>
    public (double FromMm, double ToMm) BoltRange(BracketFace face, double ribMm)
    {
        double lean = LeanMm(face, ribMm);
        return face == BracketFace.Front
            ? (design.BoltFromMm + lean, design.BoltToMm + lean)
            : (design.BaseMm - design.BoltToMm + lean, design.BaseMm - design.BoltFromMm + lean);
    }

    /// <summary>
    /// The bracket on the board, set to a contact: corners counter-clockwise. The used face is drawn where it touches, so that a leaning
    /// bracket is never drawn smaller than it is.
    /// </summary>
    public IReadOnlyList<Point> Placed(FaceContact contact)
    {
        Vector into = contact.Outward;
        Vector across = into.Left;
        Point[] placed = new Point[Plan.Count];
        for (int i = 0; i < placed.Length; i++)
        {
            Point corner = Plan[i];
            (double depth, double side) =
                contact.Face == BracketFace.Front
                    ? (corner.X, corner.Y)
                    : (design.BaseMm - corner.X, -corner.Y);
            placed[i] = contact.Middle + (into * depth) + (across * side);
        }

        return placed;
    }
}

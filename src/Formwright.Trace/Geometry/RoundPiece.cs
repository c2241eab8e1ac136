using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>
/// An arc of a circle or an ellipse: centre + cos φ · <paramref name="U"/> + sin φ · <paramref name="V"/>, φ running from
/// <paramref name="From"/> by <paramref name="Sweep"/>. Any affine map of it is of the same kind.
/// </summary>
/// <param name="Centre">Its centre, mm.</param>
/// <param name="U">Half diameter at φ = 0, mm.</param>
/// <param name="V">Its conjugate half diameter, at φ = π/2, mm.</param>
/// <param name="From">φ at the start, rad.</param>
/// <param name="Sweep">Turning of φ, rad; negative runs backwards.</param>
public sealed record RoundPiece(Point Centre, Vector U, Vector V, double From, double Sweep) : Piece
{
    public override bool IsFinite =>
        Centre.IsFinite
        && double.IsFinite(U.X)
        && double.IsFinite(U.Y)
        && double.IsFinite(V.X)
        && double.IsFinite(V.Y)
        && double.IsFinite(From)
        && double.IsFinite(Sweep);

    /// <summary>Radius where it is a circle's arc to one part in a million, mm; NaN where it is an ellipse's.</summary>
    public double RadiusMm =>
        Math.Abs(U.Length - V.Length) <= 1e-6 * U.Length
        && Math.Abs(U.Dot(V)) <= 1e-6 * U.Length * V.Length
            ? U.Length
            : double.NaN;

    internal override int FirstSteps =>
        Math.Clamp((int)Math.Ceiling(Math.Abs(Sweep) / (Math.PI / 16)), 1, 1024);

    /// <summary>An arc of a circle.</summary>
    public static RoundPiece OfCircle(Point centre, double radius, double from, double sweep) =>
        new(centre, new Vector(radius, 0), new Vector(0, radius), from, sweep);

    /// <summary>The arc between two places with a DXF bulge: tan of a quarter of its turning, left positive.</summary>
    public static Piece OfBulge(Point from, Point to, double bulge)
    {
        double chord = from.DistanceTo(to);
        if (Math.Abs(bulge) < 1e-12 || chord == 0)
        {
            return new LinePiece(from, to);
        }

        double sweep = 4 * Math.Atan(bulge);
        // Height of the centre over the chord, to the left of the direction of travel.
        double height = chord * (1 - (bulge * bulge)) / (4 * bulge);
        Point centre = from.Towards(to, 0.5) + ((to - from) * (1 / chord)).Left * height;
        return OfCircle(centre, from.DistanceTo(centre), (from - centre).Angle, sweep);
    }

    public override Point At(double t)
    {
        (double sin, double cos) = Math.SinCos(From + (Sweep * t));
        return Centre + (U * cos) + (V * sin);
    }

    public override Piece Under(Affine map) =>
        new RoundPiece(map.Of(Centre), map.Of(U), map.Of(V), From, Sweep);

    public override Piece Reversed() => new RoundPiece(Centre, U, V, From + Sweep, -Sweep);
}

using Formwright.Curves;

namespace Formwright.Trace.Geometry;

/// <summary>A straight piece.</summary>
public sealed record LinePiece(Point From, Point To) : Piece
{
    public override bool IsFinite => From.IsFinite && To.IsFinite;

    internal override int FirstSteps => 1;

    public override Point At(double t) =>
        t == 0 ? From
        : t == 1 ? To
        : From.Towards(To, t);

    public override Piece Under(Affine map) => new LinePiece(map.Of(From), map.Of(To));

    public override Piece Reversed() => new LinePiece(To, From);
}

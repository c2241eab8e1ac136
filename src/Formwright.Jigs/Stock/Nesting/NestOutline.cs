using Formwright.Curves;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Stock.Nesting;

/// <summary>The edges of a part as chords, in the part's frame as it lies on the sheet (seen from the face that is cut).</summary>
/// <param name="Loops">Outer edge and openings; closed, the first place is not repeated.</param>
/// <param name="ErrorMm">No edge departs from its chords by more than this, mm.</param>
/// <param name="KeepsGrain">The part's length must lie along the grain of the sheet.</param>
internal sealed record NestOutline(
    IReadOnlyList<IReadOnlyList<Point>> Loops,
    double ErrorMm,
    bool KeepsGrain
)
{
    private const double ChordMm = 0.05;

    /// <summary>The outline of a part.</summary>
    public static NestOutline Of(Part part) =>
        new(
            [
                .. part
                    .Insides.Prepend(part.Outside)
                    .Select(loop => Chords(loop, part.IsTurnedOver ? -1 : 1)),
            ],
            part
                .Insides.Append(part.Outside)
                .All(loop => loop.Pieces.All(piece => piece.IsStraight))
                ? 0
                : ChordMm,
            part.Grain == PartGrain.AlongLength
        );

    /// <summary>Whether two parts are cut along the same lines, so that what was worked out for one serves the other.</summary>
    public bool IsSameAs(NestOutline other) =>
        KeepsGrain == other.KeepsGrain
        && Loops.Count == other.Loops.Count
        && Loops.Zip(other.Loops).All(pair => pair.First.SequenceEqual(pair.Second));

    /// <summary>The box around it when it is turned by an angle.</summary>
    public Box BoxTurned(double angleRad)
    {
        (double sin, double cos) = TurnedOutline.SinCos(angleRad);
        return Loops[0]
            .Aggregate(
                Box.Empty,
                (box, p) =>
                    box.With(new Point((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos)))
            );
    }

    private static List<Point> Chords(ArcPath loop, int side)
    {
        List<Point> places = [];
        foreach (ArcPiece piece in loop.Pieces)
        {
            int count = 1;
            if (!piece.IsStraight)
            {
                // Sagitta R (1 - cos(turning/2n)) of each of n chords within the error.
                double half = Math.Acos(Math.Clamp(1 - (ChordMm / piece.RadiusMm), -1, 1));
                count = Math.Max(1, (int)Math.Ceiling(Math.Abs(piece.TurningRad) / (2 * half)));
            }

            for (int i = 0; i < count; i++)
            {
                Point at = piece.At((double)i / count);
                places.Add(new Point(at.X, side * at.Y));
            }
        }

        return places;
    }
}

namespace Formwright.Curves;

/// <summary>A curve as arcs and straight pieces that join (nearly) tangentially.</summary>
/// <param name="Vertices">Its corners; a closed one does not repeat the first; an open one's last bulge is 0.</param>
/// <param name="IsClosed">A last piece leads back to the first vertex.</param>
/// <param name="ErrorMm">Largest distance between it and the curve it was made from, measured densely, mm.</param>
/// <param name="KinkRad">Largest change of direction between two pieces where the curve itself has none, rad.</param>
public sealed record ArcPath(
    IReadOnlyList<ArcVertex> Vertices,
    bool IsClosed,
    double ErrorMm,
    double KinkRad
)
{
    /// <summary>Its pieces in order.</summary>
    public IEnumerable<ArcPiece> Pieces
    {
        get
        {
            for (int i = 0; i < Vertices.Count - (IsClosed ? 0 : 1); i++)
            {
                ArcVertex next = Vertices[(i + 1) % Vertices.Count];
                yield return new(Vertices[i].Position, next.Position, Vertices[i].Bulge);
            }
        }
    }

    public double LengthMm => Pieces.Sum(piece => piece.LengthMm);

    /// <summary>Area to the left, mm², counter-clockwise positive; an open path is closed by its chord.</summary>
    public double SignedAreaMm2
    {
        get
        {
            Point origin = Vertices[0].Position;
            double sum = 0;
            foreach (ArcPiece piece in Pieces)
            {
                sum += 0.5 * (piece.From - origin).Cross(piece.To - origin);
                double turn = piece.TurningRad;
                if (!piece.IsStraight)
                {
                    double radius = piece.RadiusMm;
                    sum += 0.5 * radius * radius * (turn - Math.Sin(turn));
                }
                else
                {
                    // Segment of a flat arc: two thirds of chord times sagitta.
                    sum +=
                        Math.Sign(turn) * 2 * piece.From.DistanceTo(piece.To) * piece.SagittaMm / 3;
                }
            }

            return sum;
        }
    }
}

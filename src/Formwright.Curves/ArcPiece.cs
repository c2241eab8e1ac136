namespace Formwright.Curves;

/// <summary>One arc or straight piece of an <see cref="ArcPath"/>.</summary>
/// <param name="From">Where it starts, mm.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="Bulge">tan(turning/4), left positive, 0 straight.</param>
public readonly record struct ArcPiece(Point From, Point To, double Bulge)
{
    /// <summary>It departs from its chord by less than a nanometre: as good as straight.</summary>
    public bool IsStraight => SagittaMm < 1e-6;

    /// <summary>Height over the chord, mm.</summary>
    public double SagittaMm => 0.5 * Math.Abs(Bulge) * From.DistanceTo(To);

    /// <summary>Angle that it turns by, rad, left positive.</summary>
    public double TurningRad => 4 * Math.Atan(Bulge);

    /// <summary>Radius, mm; infinite when straight.</summary>
    public double RadiusMm
    {
        get
        {
            double b = Math.Abs(Bulge);
            return From.DistanceTo(To) * (1 + (b * b)) / (4 * b);
        }
    }

    /// <summary>Curvature, 1/mm, left positive.</summary>
    public double Curvature => Bulge == 0 ? 0 : Math.Sign(Bulge) / RadiusMm;

    /// <summary>Centre, mm; of a straight piece there is none (not finite).</summary>
    public Point Centre =>
        From.Towards(To, 0.5) + ((To - From).Left * ((1 - (Bulge * Bulge)) / (4 * Bulge)));

    public double StartAngle => (To - From).Angle - (0.5 * TurningRad);

    public double EndAngle => (To - From).Angle + (0.5 * TurningRad);

    public double LengthMm => Bulge == 0 ? From.DistanceTo(To) : RadiusMm * Math.Abs(TurningRad);

    /// <summary>The same as an Euler-spiral segment.</summary>
    public EulerSegment ToSegment() => new(From, StartAngle, Curvature, 0, LengthMm);

    /// <summary>The place a share (0 to 1) along it.</summary>
    public Point At(double share)
    {
        if (share == 1)
        {
            return To;
        }

        // By the angle at the start: stable for flat arcs, whose centre is far away.
        double turn = TurningRad;
        double half = 0.5 * turn * share;
        double chord = From.DistanceTo(To);
        double reach =
            Math.Abs(turn) < 1e-9 ? chord * share : chord * Math.Sin(half) / Math.Sin(0.5 * turn);
        return From + (Vector.At(StartAngle + half) * reach);
    }

    /// <summary>Distance of a place from the full circle (or line) of this piece, mm.</summary>
    public double DistanceFromCircle(Point place)
    {
        if (Math.Abs(Bulge) > 1e-3)
        {
            return Math.Abs(place.DistanceTo(Centre) - RadiusMm);
        }

        Vector chord = To - From;
        double length = chord.Length;
        Vector along = chord * (1 / length);
        Vector from = place - From;
        // In the frame of the chord a circle through both ends is x² - Lx + y² - yL(1 - b²)/(2b) = 0: divided so that it
        // stays good for flat arcs.
        double x = from.Dot(along);
        double y = along.Cross(from);
        double k = 2 * Bulge / (length * (1 + (Bulge * Bulge)));
        double c = (1 - (Bulge * Bulge)) / (1 + (Bulge * Bulge));
        // f = k(x² - Lx + y²) - cy, k half a curvature, has gradient of length √(1 + 4kf) and vanishes on the circle.
        double f = (k * ((x * x) - (length * x) + (y * y))) - (c * y);
        return Math.Abs(2 * f / (1 + Math.Sqrt(Math.Max(0, 1 + (4 * k * f)))));
    }
}

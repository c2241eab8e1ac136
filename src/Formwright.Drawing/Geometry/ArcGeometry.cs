using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>Centre, radius and angles of an <see cref="ArcSegment"/>.</summary>
/// <param name="Centre">Centre; without meaning where <see cref="IsStraight"/>.</param>
/// <param name="RadiusMm">Radius.</param>
/// <param name="FromRad">Angle of the start as seen from the centre.</param>
/// <param name="SweepRad">Angle turned through, left positive.</param>
/// <param name="End">Last point, exactly that of the segment.</param>
public readonly record struct ArcGeometry(
    Point Centre,
    double RadiusMm,
    double FromRad,
    double SweepRad,
    Point End
)
{
    /// <summary>
    /// Arcs of a smaller bulge are taken as straight: they rise over their chord by less than a billionth of half its
    /// length, and about a centre so far away no point could be placed better than that.
    /// </summary>
    public const double Flattest = 1e-9;

    public bool IsStraight => SweepRad == 0;

    /// <summary>Geometry of the arc that starts at <paramref name="start"/>: c = chord, s = c·bulge/2 the sagitta, R = c(1+b²)/(4b).</summary>
    public static ArcGeometry Of(Point start, ArcSegment arc)
    {
        ArgumentNullException.ThrowIfNull(arc);
        double b = arc.Bulge;
        Vector chord = arc.End - start;
        double length = chord.Length;
        if (Math.Abs(b) < Flattest || length == 0)
        {
            return new ArcGeometry(start, 0, 0, 0, arc.End);
        }

        double radius = length * (1 + (b * b)) / (4 * Math.Abs(b));
        // Signed distance from the chord's middle to the centre, along the chord's left normal.
        double k = (1 - (b * b)) / (4 * b);
        Point centre = new(
            ((start.X + arc.End.X) / 2) - (k * chord.Y),
            ((start.Y + arc.End.Y) / 2) + (k * chord.X)
        );
        return new ArcGeometry(
            centre,
            radius,
            Math.Atan2(start.Y - centre.Y, start.X - centre.X),
            4 * Math.Atan(b),
            arc.End
        );
    }

    public Point At(double angleRad) =>
        new(Centre.X + (RadiusMm * Math.Cos(angleRad)), Centre.Y + (RadiusMm * Math.Sin(angleRad)));

    /// <summary>The arc as cubics of at most an eighth of a turn, each within 4.3e-6 of the radius.</summary>
    public IEnumerable<CubicSegment> Cubics()
    {
        if (IsStraight)
        {
            yield return new CubicSegment(Centre, End, End);
            yield break;
        }

        int count = Math.Max(1, (int)Math.Ceiling(Math.Abs(SweepRad) / (Math.PI / 4)));
        double step = SweepRad / count;
        double handle = 4.0 / 3.0 * Math.Tan(step / 4) * RadiusMm;
        for (int i = 0; i < count; i++)
        {
            double a = FromRad + (i * step);
            double b = a + step;
            Point from = At(a);
            Point to = i == count - 1 ? End : At(b);
            yield return new CubicSegment(
                new(from.X - (handle * Math.Sin(a)), from.Y + (handle * Math.Cos(a))),
                new(to.X + (handle * Math.Sin(b)), to.Y - (handle * Math.Cos(b))),
                to
            );
        }
    }

    /// <summary>Adds points after the start so that no chord's sagitta exceeds <paramref name="toleranceMm"/>.</summary>
    public void Flatten(double toleranceMm, ICollection<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (!IsStraight)
        {
            // 2 acos(1 - t/R) in the form that does not cancel where the arc is flat.
            double step =
                RadiusMm <= toleranceMm
                    ? Math.PI / 2
                    : 4 * Math.Asin(Math.Sqrt(toleranceMm / (2 * RadiusMm)));
            int count = (int)Math.Clamp(Math.Ceiling(Math.Abs(SweepRad) / step), 1, 100_000);
            for (int i = 1; i < count; i++)
            {
                points.Add(At(FromRad + (SweepRad * i / count)));
            }
        }

        points.Add(End);
    }
}

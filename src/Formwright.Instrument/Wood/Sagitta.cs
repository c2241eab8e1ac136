namespace Formwright.Instrument.Wood;

/// <summary>Rise of an arc over its chord, exact: s = R - √(R² - (c/2)²) and back, R = (c²/4 + s²)/2s.</summary>
public static class Sagitta
{
    /// <summary>Rise of an arc, mm, with the sign of the radius; 0 for an infinite radius. A chord longer than the diameter has no arc:
    /// the rise is then that of half the circle, |R|.</summary>
    /// <param name="radiusMm">Radius, mm.</param>
    /// <param name="chordMm">Chord, mm.</param>
    public static double OfRadius(double radiusMm, double chordMm)
    {
        double half = Guard.Positive(chordMm) / 2;
        if (double.IsInfinity(radiusMm))
        {
            return 0;
        }

        double radius = Math.Abs(radiusMm);
        // Written so that shallow arcs lose no digits.
        double rise =
            half >= radius
                ? radius
                : half * half / (radius + Math.Sqrt((radius - half) * (radius + half)));
        return Math.CopySign(rise, radiusMm);
    }

    /// <summary>Radius of an arc from its rise, mm, with its sign; infinite for no rise.</summary>
    /// <param name="riseMm">Rise in the middle, mm; at most half the chord.</param>
    /// <param name="chordMm">Chord, mm.</param>
    public static double Radius(double riseMm, double chordMm)
    {
        double half = Guard.Positive(chordMm) / 2;
        Guard.Between(riseMm, -half, half);
        return riseMm == 0 ? double.PositiveInfinity : ((half * half / riseMm) + riseMm) / 2;
    }
}

namespace Formwright.Instrument.Strings;

/// <summary>Fret positions in twelve equal steps to the octave.</summary>
public static class FretScale
{
    /// <summary>Cents of one fret.</summary>
    public const double CentsPerFret = 100;

    /// <summary>Distance of fret k from the nut, L (1 - 2^(-k/12)), mm. Fret 0 is the nut; parts of a fret are taken.</summary>
    /// <param name="scaleMm">Scale L, mm.</param>
    /// <param name="fret">Fret k.</param>
    public static double FromNutMm(double scaleMm, double fret) =>
        Guard.Positive(scaleMm) * (1 - Math.Pow(2, -Guard.Finite(fret) / 12));

    /// <summary>Distances of nut and frets 1 to <paramref name="frets"/> from the nut, mm; entry 0 is the nut.</summary>
    public static IReadOnlyList<double> Table(double scaleMm, int frets)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(frets);
        return [.. Enumerable.Range(0, frets + 1).Select(k => FromNutMm(scaleMm, k))];
    }

    /// <summary>How many cents a frequency ratio is, 1200 log₂ r.</summary>
    public static double Cents(double ratio) => 1200 * Math.Log2(Guard.Positive(ratio));
}

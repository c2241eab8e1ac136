namespace Formwright.Instrument.Strings;

/// <summary>Places of nut and saddle for one string, and what it then sounds.</summary>
/// <param name="Number">Number of the string.</param>
/// <param name="NutMm">How far the nut stands towards the saddle, mm.</param>
/// <param name="SaddleMm">How far the saddle stands past the scale, mm.</param>
/// <param name="Cents">Error at each fret, entry 0 the open string; positive is sharp.</param>
public sealed record StringIntonation(
    int Number,
    double NutMm,
    double SaddleMm,
    IReadOnlyList<double> Cents
)
{
    /// <summary>Root mean square of the errors at the frets, cents.</summary>
    public double RmsCents =>
        Cents.Count > 1 ? Math.Sqrt(Cents.Sum(each => each * each) / (Cents.Count - 1)) : 0;

    /// <summary>The error furthest from 0, cents.</summary>
    public double WorstCents => Cents.MaxBy(Math.Abs);

    /// <summary>The error furthest from 0 up to a fret, cents.</summary>
    public double WorstCentsTo(int fret) => Cents.Take(fret + 1).MaxBy(Math.Abs);
}

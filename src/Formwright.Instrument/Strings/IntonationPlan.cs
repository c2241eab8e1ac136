namespace Formwright.Instrument.Strings;

/// <summary>One way of setting nut and saddle for all strings.</summary>
/// <param name="Strings">Bass to treble.</param>
/// <param name="SaddleSetBackMm">How far the saddle's line lies past the scale on the centreline, mm (per-string ways: the best line through them).</param>
/// <param name="SaddleSlope">Set-back per mm towards the frame's treble side; its arctangent is the saddle's angle.</param>
/// <param name="Converged">Whether the fit settled.</param>
public sealed record IntonationPlan(
    IReadOnlyList<StringIntonation> Strings,
    double SaddleSetBackMm,
    double SaddleSlope,
    bool Converged
)
{
    /// <summary>Root mean square over all strings and frets, cents.</summary>
    public double RmsCents =>
        Math.Sqrt(Strings.Sum(each => each.RmsCents * each.RmsCents) / Strings.Count);

    /// <summary>The error furthest from 0 over all strings and frets, cents.</summary>
    public double WorstCents => Strings.Select(each => each.WorstCents).MaxBy(Math.Abs);

    /// <summary>How far the strings' saddle places spread about the line, mm: what the saddle's thickness must hold.</summary>
    public double SaddleSpreadMm(IReadOnlyList<InstrumentString> wires)
    {
        ArgumentNullException.ThrowIfNull(wires);
        double least = 0;
        double most = 0;
        for (int i = 0; i < Strings.Count; i++)
        {
            double off = Strings[i].SaddleMm - SaddleSetBackMm - (SaddleSlope * wires[i].SaddleYMm);
            least = Math.Min(least, off);
            most = Math.Max(most, off);
        }

        return most - least;
    }
}

namespace Formwright.Instrument.Action;

/// <summary>One line of the ramp-against-dome chart: where the saddle comes out at the same height.</summary>
/// <param name="SaddleMm">Saddle height, middle of the outermost strings, mm.</param>
/// <param name="Points">Dome under the saddle off the board against ramp, mm, by rising dome.</param>
public sealed record ChartLine(
    double SaddleMm,
    IReadOnlyList<(double DomeMm, double RampMm)> Points
);

namespace Formwright.Instrument.Action;

/// <summary>
/// The chart that hangs on the shop's wall: for the action wanted, strung, which ramp and which dome go with which saddle. Both are read unstrung: the ramp
/// on the board, the dome under the saddle with the box off the board.
/// </summary>
/// <param name="DomeMm">Range of the dome, mm.</param>
/// <param name="RampMm">Range of the ramp, mm.</param>
/// <param name="Lines">Lines of equal saddle height, every half mm over the range that the bridge allows.</param>
/// <param name="Design">The design.</param>
/// <param name="BoxMm">Half widths of the box in which builds land by their tolerances: dome, ramp, mm.</param>
/// <param name="SaddleMm">Saddle height of the design, mm.</param>
/// <param name="StraightWithinMm">How far the lines are from straight, mm of ramp.</param>
public sealed record RampDomeChart(
    (double Low, double High) DomeMm,
    (double Low, double High) RampMm,
    IReadOnlyList<ChartLine> Lines,
    (double DomeMm, double RampMm) Design,
    (double DomeMm, double RampMm) BoxMm,
    double SaddleMm,
    double StraightWithinMm
)
{
    private const double HalfRangeMm = 2;
    private const double StepMm = 0.5;
    private const int Samples = 3;
    private const int MaxSteps = 20;

    /// <summary>The chart of a chain.</summary>
    /// <param name="model">The chain, with whatever is measured.</param>
    /// <param name="box">Half widths of the tolerance box: dome, ramp, mm.</param>
    /// <param name="saddle">Least and greatest saddle height, mm.</param>
    public static RampDomeChart Of(
        ChainModel model,
        (double DomeMm, double RampMm) box,
        (double Least, double Most) saddle
    )
    {
        ArgumentNullException.ThrowIfNull(model);
        double dome = model.Figures.DomeFreeMm;
        double ramp = model.Figures.RampMm;
        (double Low, double High) domes = Range(dome);
        (double Low, double High) ramps = Range(ramp);
        double now = SaddleAt(model, dome, ramp);
        List<ChartLine> lines = [];
        double bent = 0;
        for (
            double s = Math.Ceiling(saddle.Least / StepMm) * StepMm;
            s <= saddle.Most + 1e-9;
            s += StepMm
        )
        {
            (double DomeMm, double RampMm)[] points = new (double, double)[Samples];
            for (int i = 0; i < Samples; i++)
            {
                double at = domes.Low + ((domes.High - domes.Low) * i / (Samples - 1));
                points[i] = (at, RampFor(model, at, s, ramp + (now - s) - (at - dome)));
            }

            for (int i = 1; i < Samples - 1; i++)
            {
                double straight =
                    points[0].RampMm + ((points[^1].RampMm - points[0].RampMm) * i / (Samples - 1));
                bent = Math.Max(bent, Math.Abs(points[i].RampMm - straight));
            }

            lines.Add(new(s, points));
        }

        return new(domes, ramps, lines, (dome, ramp), box, now, bent);
    }

    private static (double, double) Range(double middle)
    {
        double low = Math.Max(0, Math.Floor((middle - HalfRangeMm) * 2) / 2);
        return (low, low + (2 * HalfRangeMm));
    }

    private static double SaddleAt(ChainModel model, double dome, double ramp)
    {
        double off = dome - model.Figures.DomeFreeMm;
        ChainModel moved = model with
        {
            Figures = model.Figures with
            {
                DomeFreeMm = dome,
                DomeStrungMm = model.Figures.DomeStrungMm + off,
                RampMm = ramp,
            },
        };
        return moved.Needed(BuildStage.Strung).SaddleMm;
    }

    // One mm of ramp is very nearly one mm of saddle times the lever of saddle and fret 12 over the nut.
    private static double RampFor(ChainModel model, double dome, double saddle, double guess)
    {
        double x0 = guess;
        double f0 = SaddleAt(model, dome, x0) - saddle;
        double x1 = guess + 0.1;
        for (int step = 0; step < MaxSteps; step++)
        {
            double f1 = SaddleAt(model, dome, x1) - saddle;
            if (Math.Abs(f1) < 1e-9 || f1 == f0)
            {
                return x1;
            }

            (x0, x1, f0) = (x1, x1 - (f1 * (x1 - x0) / (f1 - f0)), f1);
        }

        return x1;
    }
}

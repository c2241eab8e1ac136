namespace Formwright.Instrument.Wood;

/// <summary>
/// A plate glued across the grain onto a bar: the domed soundboard on its harmonic bar, the back on its back bar. The plate swells
/// across its grain, the bar hardly along its own, so the arch rises in damp air and sinks in dry air. Closed form: the two-layer strip of
/// <see cref="LayeredStrip"/> (Timoshenko 1925), bar of its own width under a plate as wide as the share that the bar carries. The change of
/// curvature adds to the arch as glued. Elastic and free at its ends: it leaves out the rim's hold, creep, and the plate's own bend between
/// bars, so it is the most that the arch will do, and the pull is what there would be before the wood gives.
/// </summary>
/// <param name="Plate">Wood of the plate.</param>
/// <param name="PlateThicknessMm">Thickness of the plate, mm.</param>
/// <param name="Bar">Wood of the bar, grain along it.</param>
/// <param name="BarWidthMm">Width of the bar, mm.</param>
/// <param name="BarHeightMm">Height of the bar, mm.</param>
/// <param name="ShareMm">Width of plate that the bar carries, mm.</param>
/// <param name="GluedRadiusMm">Radius of the arch when glued, mm; infinite for flat.</param>
/// <param name="SpanMm">Chord over which the rise is read, mm.</param>
/// <param name="GluedMoisturePercent">Moisture content when glued, %.</param>
public sealed record ArchedPlate(
    Timber Plate,
    double PlateThicknessMm,
    Timber Bar,
    double BarWidthMm,
    double BarHeightMm,
    double ShareMm,
    double GluedRadiusMm,
    double SpanMm,
    double GluedMoisturePercent
)
{
    /// <summary>Change of curvature per % of moisture, 1/mm, arching up when it gets wetter.</summary>
    public double CurvaturePerPercent => Strip(1).CurvaturePerMm;

    /// <summary>The plate in some air.</summary>
    public ArchState In(Air air) => At(air.HumidityPercent, air.MoisturePercent);

    /// <summary>The humidity to glue at so that the arch strays least over a range of air, %: half way between the two moistures
    /// (the curvature is linear in the moisture). Gluing drier leans the arch to the safe side: it is pulled less in the dry.</summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="dryPercent">Driest air, % relative humidity.</param>
    /// <param name="wetPercent">Dampest air, %.</param>
    public static double BestGlueHumidity(
        double temperatureC,
        double dryPercent,
        double wetPercent
    ) =>
        Moisture.HumidityFor(
            temperatureC,
            (
                Moisture.Equilibrium(temperatureC, dryPercent)
                + Moisture.Equilibrium(temperatureC, wetPercent)
            ) / 2
        );

    /// <summary>
    /// The dampest air in which the plate may be glued so that in the driest air a share of the arch's curvature is left, % relative humidity; 100
    /// for a plate without arch, which has none to lose. The curvature is linear in the moisture lost.
    /// </summary>
    /// <param name="temperatureC">Temperature, °C.</param>
    /// <param name="dryPercent">Driest air, % relative humidity.</param>
    /// <param name="leastShare">Share of the curvature as glued that must be left, 0 to 1.</param>
    public double DampestGlueHumidity(double temperatureC, double dryPercent, double leastShare)
    {
        Guard.Between(leastShare, 0, 1);
        if (!(GluedRadiusMm > 0) || double.IsInfinity(GluedRadiusMm))
        {
            return 100;
        }

        double dry = Moisture.Equilibrium(temperatureC, dryPercent);
        double lost = (1 - leastShare) / GluedRadiusMm / CurvaturePerPercent;
        double most = Moisture.Equilibrium(temperatureC, 100);
        return Moisture.HumidityFor(temperatureC, Math.Min(most, dry + lost));
    }

    private ArchState At(double humidityPercent, double moisturePercent)
    {
        double change = moisturePercent - GluedMoisturePercent;
        double curvature = (1 / GluedRadiusMm) + (CurvaturePerPercent * change);
        return new ArchState(
            humidityPercent,
            moisturePercent,
            1 / curvature,
            Sagitta.OfRadius(1 / curvature, SpanMm),
            PullMPa(change)
        );
    }

    private double PullMPa(double change)
    {
        LayeredStrip strip = Strip(change);
        return Math.Max(
            strip.StressMPa(1, BarHeightMm),
            strip.StressMPa(1, BarHeightMm + PlateThicknessMm)
        );
    }

    private LayeredStrip Strip(double change) =>
        LayeredStrip.Of(
            new Layer(
                BarWidthMm,
                BarHeightMm,
                Bar.ModulusLongMPa,
                change * Movement.AlongGrainPerPercent
            ),
            new Layer(
                ShareMm,
                PlateThicknessMm,
                Plate.ModulusAcrossMPa,
                change * Plate.AcrossPerPercent
            )
        );
}

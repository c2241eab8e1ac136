namespace Formwright.Jigs.Mould;

/// <summary>Clearance holes for bolts, ISO 273, medium series.</summary>
public static class BoltHoles
{
    // ISO 273:1979, medium series, mm; only the sizes that a mould takes.
    private static readonly Dictionary<double, double> Medium = new()
    {
        [5] = 5.5,
        [6] = 6.6,
        [8] = 9,
    };

    /// <summary>Diameter of the clearance hole, mm. Sizes outside the table take a tenth more than the bolt (common practice).</summary>
    public static double ClearanceMm(double boltMm) =>
        Medium.TryGetValue(boltMm, out double hole) ? hole : Math.Round(boltMm * 1.1, 1);
}

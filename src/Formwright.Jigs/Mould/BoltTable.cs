namespace Formwright.Jigs.Mould;

/// <summary>Cylinder-head bolts: heads after ISO 4762, and the lengths that are in trade.</summary>
public static class BoltTable
{
    // ISO 4762: largest head diameter and height, mm; only the sizes that were read in print.
    private static readonly Dictionary<double, (double DiameterMm, double HeightMm)> Heads = new()
    {
        [6] = (10, 6),
        [8] = (13, 8),
    };

    // Lengths in trade, mm: common practice (from memory, not from the standard); check them with your supplier.
    private static readonly double[] LengthsMm =
    [
        16,
        20,
        25,
        30,
        35,
        40,
        45,
        50,
        55,
        60,
        65,
        70,
        80,
        90,
        100,
        110,
        120,
        130,
        140,
        150,
        160,
        180,
        200,
    ];

    /// <summary>Diameter and height of a head, mm. Sizes outside the table: 1.6 and 1 times the bolt (common practice).</summary>
    public static (double DiameterMm, double HeightMm) HeadMm(double boltMm) =>
        Heads.TryGetValue(boltMm, out (double, double) head) ? head : (1.6 * boltMm, boltMm);

    /// <summary>The shortest length in trade from <paramref name="leastMm"/> to <paramref name="mostMm"/>; null where there is none.</summary>
    public static double? LengthMm(double leastMm, double mostMm)
    {
        double found = Array.Find(LengthsMm, length => length >= leastMm - 1e-9);
        return found > 0 && found <= mostMm + 1e-9 ? found : null;
    }
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[tolerances]</c>: a ± for every figure of the height chain (rectangular, u = a/√3), or in <c>[tolerances.deviation]</c>
/// its standard deviation (normal). The defaults are our own guesses for careful bench work; a maker replaces them by what the log says.
/// </summary>
/// <param name="Of">The tolerance of every figure.</param>
/// <param name="Builds">Builds of the Monte Carlo run.</param>
/// <param name="Seed">Its seed.</param>
public sealed record TolerancesDesign(
    IReadOnlyDictionary<ChainInput, ToleranceDesign> Of,
    int Builds,
    int Seed
)
{
    private static readonly (
        ChainInput Input,
        string Key,
        double PlusMinus,
        double Most,
        string Unit
    )[] Table =
    [
        (ChainInput.Ramp, "ramp", 0.2, 5, "mm"),
        (ChainInput.NeckOffBoard, "neck_off_board", 0.2, 5, "mm"),
        (ChainInput.NeckAfterGlueing, "neck_after_glueing", 0.2, 5, "mm"),
        (ChainInput.FingerboardNut, "fingerboard_nut", 0.1, 5, "mm"),
        (ChainInput.FingerboardJoin, "fingerboard_join", 0.1, 5, "mm"),
        (ChainInput.FretHeight, "fret_height", 0.05, 2, "mm"),
        (ChainInput.NutClearance, "nut_clearance", 0.05, 2, "mm"),
        (ChainInput.DomeBoard, "dome_board", 0.2, 10, "mm"),
        (ChainInput.DomeFree, "dome_free", 0.3, 10, "mm"),
        (ChainInput.DomeStrung, "dome_strung", 0.3, 10, "mm"),
        (ChainInput.BridgeRise, "bridge_rise", 0.2, 5, "mm"),
        (ChainInput.BridgeRotation, "bridge_rotation", 0.5, 5, "°"),
        (ChainInput.Saddle, "saddle", 0.1, 5, "mm"),
        (ChainInput.JoinRotation, "join_rotation", 0.05, 1, "°"),
        (ChainInput.Creep, "creep", 0.2, 3, ""),
        (ChainInput.NeckModulus, "neck_modulus", 15, 90, "%"),
        (ChainInput.FingerboardModulus, "fingerboard_modulus", 15, 90, "%"),
        (ChainInput.NeckThickness, "neck_thickness", 0.3, 3, "mm"),
        (ChainInput.Tension, "tension", 5, 50, "%"),
    ];

    /// <summary>Name of a figure's key in <c>[tolerances]</c>.</summary>
    public static string KeyOf(ChainInput input) => Table.First(row => row.Input == input).Key;

    /// <summary>Unit of a figure's tolerance.</summary>
    public static string UnitOf(ChainInput input) => Table.First(row => row.Input == input).Unit;

    internal static TolerancesDesign Read(TableReader table)
    {
        TableReader deviation = table.Table("deviation");
        Dictionary<ChainInput, ToleranceDesign> of = [];
        foreach ((ChainInput input, string key, double standard, double most, string unit) in Table)
        {
            bool isLength = unit == "mm";
            // What the plate computes brings its own uncertainty; there a tolerance is only what the maker states.
            double? own = input switch
            {
                ChainInput.BridgeRise => table.OptionalLength(key, 0, most),
                ChainInput.BridgeRotation => table.OptionalNumber(key, 0, most, unit),
                _ when isLength => table.Length(key, standard, 0, most),
                _ => table.Number(key, standard, 0, most, unit),
            };
            double? sigma = isLength
                ? deviation.OptionalLength(key, 0, most)
                : deviation.OptionalNumber(key, 0, most, unit);
            of[input] = new ToleranceDesign(own ?? standard, sigma, (own ?? sigma) is not null);
        }

        return new(
            of,
            table.Whole("builds", 100_000, 1000, 2_000_000),
            table.Whole("seed", 1, 0, int.MaxValue)
        );
    }
}

using Formwright.Design.Reading;

namespace Formwright.Design.Sections;

/// <summary>
/// <c>[board_test]</c>: what the maker measured of the soundboard's wood, as a rectangle with its grain along the length: size and
/// mass, a bending test (resting on two edges, loaded in the middle), the notes it gives when tapped, free at its edges.
/// Its modulus, density and shear replace the table's. Absent keys are not used.
/// </summary>
public sealed record BoardTestDesign(
    double? LengthMm,
    double? WidthMm,
    double? ThicknessMm,
    double? MassG,
    double? BendSpanMm,
    double? BendLoadG,
    double? BendDeflectionMm,
    double? CrossSpanMm,
    double? CrossLoadG,
    double? CrossDeflectionMm,
    double? TapLongHz,
    double? TapCrossHz,
    double? TapTwistHz
)
{
    internal static BoardTestDesign Read(TableReader table)
    {
        BoardTestDesign test = new(
            table.OptionalLength("length", 50, 1500),
            table.OptionalLength("width", 10, 1000),
            table.OptionalLength("thickness", 0.5, 50),
            table.OptionalNumber("mass", 1, 20000, "g"),
            table.OptionalLength("bend_span", 50, 1500),
            table.OptionalNumber("bend_load", 1, 50000, "g"),
            table.OptionalLength("bend_deflection", 0.01, 100),
            table.OptionalLength("cross_span", 20, 1000),
            table.OptionalNumber("cross_load", 1, 50000, "g"),
            table.OptionalLength("cross_deflection", 0.01, 100),
            table.OptionalNumber("tap_long", 5, 20000, "Hz"),
            table.OptionalNumber("tap_cross", 5, 20000, "Hz"),
            table.OptionalNumber("tap_twist", 5, 20000, "Hz")
        );
        bool any =
            test
            is not {
                BendSpanMm: null,
                BendLoadG: null,
                BendDeflectionMm: null,
                CrossSpanMm: null,
                CrossLoadG: null,
                CrossDeflectionMm: null,
                TapLongHz: null,
                TapCrossHz: null,
                TapTwistHz: null,
                MassG: null
            };
        string? missing = any ? Missing(test) : null;
        if (missing is not null)
        {
            table.Fault(missing, DesignWords.Of.Format("diagnostic.board-test", missing));
        }

        return test;
    }

    private static string? Missing(BoardTestDesign test)
    {
        (string Key, double? Value, bool Needed)[] all =
        [
            ("length", test.LengthMm, true),
            ("width", test.WidthMm, true),
            ("thickness", test.ThicknessMm, true),
            (
                "mass",
                test.MassG,
                (test.TapLongHz ?? test.TapCrossHz ?? test.TapTwistHz) is not null
            ),
            ("bend_span", test.BendSpanMm, (test.BendLoadG ?? test.BendDeflectionMm) is not null),
            ("bend_load", test.BendLoadG, test.BendSpanMm is not null),
            ("bend_deflection", test.BendDeflectionMm, test.BendSpanMm is not null),
            (
                "cross_span",
                test.CrossSpanMm,
                (test.CrossLoadG ?? test.CrossDeflectionMm) is not null
            ),
            ("cross_load", test.CrossLoadG, test.CrossSpanMm is not null),
            ("cross_deflection", test.CrossDeflectionMm, test.CrossSpanMm is not null),
        ];
        return all.Where(key => key.Needed && key.Value is null)
            .Select(key => key.Key)
            .FirstOrDefault();
    }
}

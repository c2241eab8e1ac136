using System.ComponentModel;
using System.Text.Json.Serialization;
using Formwright.Design.Reading;
using Formwright.Jigs.Mould;

namespace Formwright.Packs.Report;

/// <summary>A dowel or bolt.</summary>
public sealed record FastenerReport(
    [property: Description("dowel or bolt.")] string Kind,
    [property: Description("From the nut, mm.")] double XMm,
    [property:
        Description(
            "From the centreline, positive on the bass side (the board is seen from above, instrument face down), mm."
        ),
        JsonPropertyName("y_b_mm")
    ]
        double YBMm,
    [property: Description("Diameter of the hole, mm.")] double DiameterMm,
    [property: Description("From its centre to the nearest edge of the wall or rebate, mm.")]
        double EdgeDistanceMm
)
{
    internal static FastenerReport Of(Fastener fastener) =>
        new(
            Choices.NameOf(fastener.Kind),
            fastener.Centre.X,
            fastener.Centre.Y,
            fastener.DiameterMm,
            fastener.EdgeDistanceMm
        );
}

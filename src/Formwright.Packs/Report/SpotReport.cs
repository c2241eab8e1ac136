using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Formwright.Packs.Report;

/// <summary>A hole to drill to a depth stop before the relief is carved.</summary>
public sealed record SpotReport(
    [property: Description("From the nut, mm.")] double XMm,
    [property:
        Description("From the centreline, positive on the bass side, mm."),
        JsonPropertyName("y_b_mm")
    ]
        double YBMm,
    [property: Description("Depth, mm.")] double DepthMm
);

using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Formwright.Packs.Report;

/// <summary>The end of a brace over the relief.</summary>
public sealed record BraceEndReport(
    [property: Description("Name of the brace.")] string Brace,
    [property: Description("From the nut, mm.")] double XMm,
    [property:
        Description("From the centreline, positive on the bass side, mm."),
        JsonPropertyName("y_b_mm")
    ]
        double YBMm,
    [property: Description("Between the domed soundboard and the hollow, mm.")] double GapMm,
    [property: Description("Whether the gap is so small that it holds.")] bool IsHeld
);

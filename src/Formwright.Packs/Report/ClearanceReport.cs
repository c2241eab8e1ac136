using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>Depth of the relief and what it leaves under the dome at one place.</summary>
public sealed record ClearanceReport(
    [property: Description("From the nut, mm.")] double XMm,
    [property: Description("From the centreline, to either side, mm.")] double AcrossMm,
    [property: Description("Depth of the relief, mm.")] double DepthMm,
    [property: Description("What is left under the dome, mm.")] double ClearanceMm
);

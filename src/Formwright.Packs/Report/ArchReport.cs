using System.ComponentModel;

namespace Formwright.Packs.Report;

/// <summary>The arch of a bar in dry and damp air.</summary>
public sealed record ArchReport(
    [property: Description("Name of the bar on the sheet.")] string Name,
    [property: Description("Rise in the driest air, mm.")] double DryMm,
    [property: Description("Rise as glued, mm.")] double GluedMm,
    [property: Description("Rise in the dampest air, mm.")] double WetMm
);

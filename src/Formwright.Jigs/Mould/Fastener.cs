using Formwright.Curves;
using Formwright.Jigs.Parts;

namespace Formwright.Jigs.Mould;

/// <summary>A dowel or bolt through board and mould.</summary>
/// <param name="Kind">Dowel or bolt.</param>
/// <param name="Centre">Centre of its hole, workboard frame (y_b positive on the bass side), mm.</param>
/// <param name="DiameterMm">Diameter of its hole, mm.</param>
/// <param name="EdgeDistanceMm">From its centre to the nearest edge of the mould wall, the rebate's edge included, mm.</param>
public sealed record Fastener(
    HoleKind Kind,
    Point Centre,
    double DiameterMm,
    double EdgeDistanceMm
);

using Formwright.Curves;

namespace Formwright.Jigs.Parts;

/// <summary>A drilled hole.</summary>
/// <param name="Kind">What it takes.</param>
/// <param name="Centre">Its centre, workboard frame, mm.</param>
/// <param name="DiameterMm">Diameter to drill, mm.</param>
/// <param name="DepthMm">Depth, mm; null goes through.</param>
public sealed record Hole(HoleKind Kind, Point Centre, double DiameterMm, double? DepthMm = null);

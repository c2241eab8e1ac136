using Formwright.Curves;

namespace Formwright.Web.Components.Board;

/// <summary>A hole on a drawn view.</summary>
/// <param name="Centre">Its middle in the part's own frame, mm.</param>
/// <param name="DiameterMm">Its diameter, mm.</param>
/// <param name="At">Where it stands in the picture.</param>
/// <param name="Radius">How large it is there.</param>
internal sealed record HoleTarget(Point Centre, double DiameterMm, Point At, double Radius);

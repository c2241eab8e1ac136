using Formwright.Curves;

namespace Formwright.Drawing;

/// <summary>A place whose distance from the datum is written: <paramref name="Name"/> is lettered beside the figure.</summary>
public sealed record Station(Point At, string? Name = null);

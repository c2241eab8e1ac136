using Formwright.Curves;
using Formwright.Trace;

namespace Formwright.Web.Designs;

/// <summary>Another outline that lies over that of a design: another design of the folder, or a trace. Kept while the server runs.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Fair">Its outline, body frame.</param>
/// <param name="Treble">Points of a trace on the treble side; empty for a design.</param>
/// <param name="Bass">Points of a trace on the bass side; empty for a design.</param>
/// <param name="Bumps">Bumps of a trace, the worst first.</param>
public sealed record Overlay(
    string Name,
    Outline Fair,
    IReadOnlyList<Point> Treble,
    IReadOnlyList<Point> Bass,
    IReadOnlyList<Bump> Bumps
)
{
    /// <summary>A trace to lay over.</summary>
    public static Overlay Of(string name, TraceResult trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        return new Overlay(name, trace.Fair, trace.Treble, trace.Bass, trace.Bumps);
    }
}
